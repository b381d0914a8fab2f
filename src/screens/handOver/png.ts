/** A picture of vectors as pixels: the browser draws it at the size that is wanted. Rejects where it cannot. */
const PICTURE = 'data:image/svg+xml;charset=utf-8,';

/** @param scale pixels for each px of the picture */
export async function pngOf(svg: string, scale: number): Promise<Uint8Array<ArrayBuffer>> {
  const image = new Image();
  image.src = PICTURE + encodeURIComponent(svg);
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth * scale;
  canvas.height = image.naturalHeight * scale;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw new Error(`a picture of ${canvas.width} × ${canvas.height} pixels is too large here`);
  return new Uint8Array(await blob.arrayBuffer());
}
