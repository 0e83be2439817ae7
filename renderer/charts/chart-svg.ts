/** What a drawing takes from the page's style sheets and would lose outside of it. */
const carried = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-opacity',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
  'opacity',
];

const margin_px = 16;
const title_px = 18;
const line_px = 18;
/** A letter's usual width at 13 px, for breaking lines. */
const letter_px = 6.4;

/** The words that go with a picture: without them a drawing tells nothing on another day. */
export interface PictureWords {
  readonly title: string;
  readonly sentence: string | null;
  /** What the marks mean. */
  readonly key: string;
}

/** Lines of at most so many letters, broken between words. */
export function brokenLines(words: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= letters) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function escaped(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** The drawing with its styles written into it. */
function standalone(svg: SVGSVGElement): SVGSVGElement {
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
  return copy;
}

/** A picture of a chart as SVG text, and its size. */
export interface ChartSvg {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/**
 * A chart as a picture that stands alone: title, sentence, drawing and key, in the colours it is shown in.
 *
 * @param svg the drawing as it stands in the page
 */
export function chartSvg(svg: SVGSVGElement, { title, sentence, key }: PictureWords): ChartSvg {
  const drawn = svg.getBoundingClientRect();
  const page = getComputedStyle(document.documentElement);
  const letters = Math.floor(drawn.width / letter_px);
  const above = sentence === null ? [] : brokenLines(sentence, letters);
  const below = brokenLines(key, letters);
  const drawingTop = 2 * margin_px + title_px + above.length * line_px;
  const width = drawn.width + 2 * margin_px;
  const height = drawingTop + drawn.height + below.length * line_px + 2 * margin_px;
  const line = (words: string, y: number, style: string) =>
    `<text x="${margin_px}" y="${y}" style="${style}">${escaped(words)}</text>`;
  const font = page.fontFamily.replaceAll('"', "'");
  const plain = `fill:${page.color};font:400 13px ${font}`;
  const copy = standalone(svg);
  copy.setAttribute('x', String(margin_px));
  copy.setAttribute('y', String(drawingTop));
  copy.setAttribute('width', String(drawn.width));
  copy.setAttribute('height', String(drawn.height));
  const text = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">`,
    `<rect width="100%" height="100%" fill="${page.backgroundColor}"/>`,
    line(title, margin_px + title_px * 0.8, `fill:${page.color};font:600 ${title_px}px ${font}`),
    ...above.map((words, place) => line(words, margin_px + title_px + (place + 1) * line_px, plain)),
    new XMLSerializer().serializeToString(copy),
    ...below.map((words, place) => line(words, drawingTop + drawn.height + (place + 1) * line_px, plain)),
    '</svg>',
  ].join('\n');
  return { text, width, height };
}
