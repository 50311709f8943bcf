import { expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { Engine } from '../../../shared-core/engine.js';
import { repairEdits } from '../../../shared-core/engine/repairs.js';
import { asMessage } from '../../in-words.js';

test('a key below the carcasses is repaired where it stands', () => {
  const text = ['carcasses:', '  sink:', '    kind: base', '    width: 600', 'titel: Kitchen # the name', ''].join(
    '\n',
  );
  const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('There is no such file.') }) });
  const analysis = engine.analyse('file:///x.carcass.yaml', text);
  const found = analysis.findings().find(({ finding }) => finding.rule === 'key-unknown');
  const repair = found?.finding.repairs[0];
  if (!found || !repair) throw new Error('the misspelt key is not found');
  const edits = repairEdits(analysis, { carcass: found.carcass, repair });
  expect(applyEdits(text, edits ?? [])).toBe(text.replace('titel', 'title'));
});
