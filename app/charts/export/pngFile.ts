import type { SvgFile } from './svgFile';

/** Pixels of the picture for each of the drawing. */
const sharpness = 2;

/** Why a picture could not be made. */
export class NoPicture extends Error {}

/**
 * A drawing as a picture, twice as sharp as on a plain screen. The file is shown to a canvas as an
 * image, so nothing of it can reach the page.
 *
 * @throws NoPicture when this computer cannot draw it: too large, or out of memory
 */
export async function pngOf({ text, width, height }: SvgFile): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode().catch(() => {
      throw new NoPicture('the drawing could not be read');
    });
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * sharpness);
    canvas.height = Math.round(height * sharpness);
    const brush = canvas.getContext('2d');
    if (!brush) throw new NoPicture('no canvas');
    brush.drawImage(image, 0, 0, canvas.width, canvas.height);
    const picture = await new Promise<Blob | null>((resolve) =>
      canvas.toBlob(resolve, 'image/png'),
    );
    if (!picture) throw new NoPicture('the canvas gave nothing');
    return picture;
  } finally {
    URL.revokeObjectURL(address);
  }
}
