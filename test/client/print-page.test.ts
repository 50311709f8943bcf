import { expect, test } from 'vitest';
import { printPage } from '../../client/panels/preview/print-page.js';

const DRAWING =
  '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg" width="214.5mm" height="187mm" viewBox="0 0 1 1"><rect/></svg>';

test('a drawing is printed on a sheet of its own size, so that its scale holds', () => {
  const page = printPage('sink-left', DRAWING, 'de');
  expect(page).toContain('<html lang="de">');
  expect(page).toContain('@page { size: 214.5mm 187mm; margin: 0 }');
  expect(page).toContain('body { margin: 0 }');
  // The declaration of XML has no place in a page; the drawing is in it as it is.
  expect(page).not.toContain('<?xml');
  expect(page).toContain(DRAWING.slice(DRAWING.indexOf('<svg')));
  expect(page.match(/<script>/g)).toHaveLength(1);
});

test('a name cannot break out of the title, and a drawing without a size goes on A4', () => {
  const page = printPage('</title><script>alert(1)</script>', '<svg viewBox="0 0 1 1"></svg>', 'de');
  expect(page.match(/<script>/g)).toHaveLength(1);
  // ISO 216.
  expect(page).toContain('size: 210mm 297mm');
});
