/** What a drawing takes from the page's style sheets and would lose outside of it. */
const carried = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
  'opacity',
];

const sharpness = 2;
const margin_px = 16;
const title_px = 18;

function standalone(svg: SVGSVGElement): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const [from, to] = [
    [svg, ...svg.querySelectorAll('*')],
    [copy, ...copy.querySelectorAll('*')],
  ];
  from.forEach((element, place) => {
    const style = getComputedStyle(element);
    const own = carried.map((name) => `${name}:${style.getPropertyValue(name)}`).join(';');
    to[place]?.setAttribute('style', own);
  });
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return new XMLSerializer().serializeToString(copy);
}

/**
 * A chart as a PNG, with its title above it, in the colours it is shown in.
 *
 * @param svg the drawing as it stands in the page
 * @throws Error when the browser can't draw it
 */
export async function chartPicture(svg: SVGSVGElement, title: string): Promise<Blob> {
  const { width, height } = svg.getBoundingClientRect();
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(standalone(svg))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = (width + 2 * margin_px) * sharpness;
  canvas.height = (height + 3 * margin_px + title_px) * sharpness;
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('This browser can’t draw pictures.');
  const page = getComputedStyle(document.documentElement);
  pen.scale(sharpness, sharpness);
  pen.fillStyle = page.backgroundColor;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = page.color;
  pen.font = `600 ${title_px}px ${page.fontFamily}`;
  pen.fillText(title, margin_px, margin_px + title_px * 0.8);
  pen.drawImage(image, margin_px, 2 * margin_px + title_px, width, height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob === null ? reject(new Error('The picture is empty.')) : resolve(blob)), 'image/png');
  });
}
