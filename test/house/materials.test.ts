import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import Ajv from 'ajv';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..');
const json = (path: string): object => JSON.parse(readFileSync(path, 'utf8')) as object;

interface Materials {
  readonly components: readonly { readonly name: string; readonly version?: string; readonly purl?: string }[];
}
const materials = json(join(root, 'dist', 'materials.cdx.json')) as Materials;

test('the bill of materials keeps to its standard', () => {
  // Source: the JSON Schema of CycloneDX 1.6 (ECMA-424), as published with the standard's own library.
  const library = dirname(createRequire(import.meta.url).resolve('@cyclonedx/cyclonedx-library/package.json'));
  const schema = (name: string): object => json(join(library, 'res', 'schema', `${name}.SNAPSHOT.schema.json`));
  const ajv = new Ajv({ strict: false, validateFormats: false });
  // They are asked for by the names of their files.
  for (const other of ['spdx', 'jsf-0.82', 'cryptography-defs'])
    ajv.addSchema({ ...schema(other), $id: `http://cyclonedx.org/schema/${other}.SNAPSHOT.schema.json` });
  const isValid = ajv.compile(schema('bom-1.6'));
  isValid(materials);
  expect(isValid.errors).toBeNull();
});

test('the bill of materials names the packages whose licences ship, and no others', () => {
  const licences = readFileSync(join(root, 'dist', 'LICENCES.txt'), 'utf8');
  const named = licences.split(/\n-{80}\n\n/).map((notice) => notice.slice(0, notice.indexOf(' (')));
  const packages = materials.components.filter(({ purl }) => purl !== undefined);
  expect(packages.map(({ name, version }) => `${name} ${version}`).sort()).toEqual(named.sort());
  expect(named.length).toBeGreaterThan(10);
});
