/** Of a printer that shows every line of a drawing. */
const DOTS_PER_MM = 300 / 25.4;
/** More dots than this on a side, and pictures are refused by some who show them. */
const MOST_DOTS = 8000;

/** A drawing of ours, sizes in millimetres of paper, as a PNG of 300 dots an inch; fewer where it is very large. */
export async function paint(svg: string): Promise<Blob> {
  const [width, height] = (/<svg[^>]* width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? []).slice(1).map(Number);
  if (width === undefined || height === undefined) throw new Error('the drawing has no size');
  const dots = Math.min(DOTS_PER_MM, MOST_DOTS / Math.max(width, height));
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * dots);
  canvas.height = Math.round(height * dots);
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((done, fail) => {
    canvas.toBlob((blob) => (blob === null ? fail(new Error('there is no room for it')) : done(blob)), 'image/png');
  });
}

/** What a picture is made of, as text that goes over a message channel. */
export async function asBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}
