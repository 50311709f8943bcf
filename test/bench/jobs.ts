/** A job of believable carcasses of five kinds, in many widths and with remarks; invented. */
export function jobOf(count: number): string {
  const bodies = [
    (width: number) => `kind: base\n    width: ${width}\n    plinth: 120\n    loose-shelves: 1`,
    (width: number) => `kind: wall\n    width: ${width}\n    loose-shelves: 2\n    joint: cam-15`,
    (width: number) =>
      `kind: tall\n    width: ${width} # beside the door\n    fixed-shelves: [712]\n    loose-shelves: 4`,
    (width: number) => `kind: base\n    width: ${width}\n    fronts: [drawer, drawer]`,
    (width: number) => `kind: base\n    width: ${width}\n    doors: pair\n    dividers: 1`,
  ];
  const blocks = Array.from({ length: count }, (_, index) => {
    const width = 400 + ((index * 7) % 61) * 10;
    return `  box-${index}:\n    ${bodies[index % bodies.length]!(width)}\n`;
  });
  return `title: Bench\nshop: shed.shop.yaml\n\ndefaults:\n  plinth: 100\n\ncarcasses:\n${blocks.join('\n')}`;
}
