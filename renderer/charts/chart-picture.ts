import type { ChartSvg } from './chart-svg.ts';

const sharpness = 2;

/**
 * A chart's picture as a PNG, twice as sharp as on the screen.
 *
 * @param picture from `chartSvg`
 * @throws Error when the browser can't draw it
 */
export async function chartPicture({ text, width, height }: ChartSvg): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(width * sharpness);
  canvas.height = Math.ceil(height * sharpness);
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('This browser can’t draw pictures.');
  pen.scale(sharpness, sharpness);
  pen.drawImage(image, 0, 0, width, height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob === null ? reject(new Error('The picture is empty.')) : resolve(blob)), 'image/png');
  });
}
