import { templateOf } from '../../shared-core/service.js';

/** Which file a client wants to begin. */
export interface TemplateParams {
  readonly kind: 'job' | 'shop';
  readonly unit: 'mm' | 'in';
}

/** A file to begin with, as a snippet with places to be filled in. */
export function template({ kind, unit }: TemplateParams): string {
  return templateOf(kind === 'shop' ? 'shop' : 'job', unit === 'in' ? 'in' : 'mm');
}
