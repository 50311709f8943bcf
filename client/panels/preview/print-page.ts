/** A page of the drawing's own size, so that it is printed at the scale that its head states. */
export function printPage(name: string, svg: string, language: string): string {
  const drawing = svg.slice(svg.indexOf('<svg'));
  const [, width = '210mm', height = '297mm'] = /<svg[^>]* width="([\d.]+mm)" height="([\d.]+mm)"/.exec(drawing) ?? [];
  return `<!doctype html>
<html lang="${language}">
  <head>
    <meta charset="utf-8">
    <title>${name.replace(/[&<]/g, '-')}</title>
    <style>@page { size: ${width} ${height}; margin: 0 } body { margin: 0 } svg { display: block }</style>
  </head>
  <body>
    ${drawing}
    <script>addEventListener('load', () => print())</script>
  </body>
</html>
`;
}
