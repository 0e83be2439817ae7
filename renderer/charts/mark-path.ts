import type { MarkShape } from './course-chart-data.ts';

function polygon(x: number, y: number, radius: number, corners: number, turn: number): string {
  const places = Array.from({ length: corners }, (_, corner) => {
    const angle = turn + (2 * Math.PI * corner) / corners;
    return `${(x + radius * Math.cos(angle)).toFixed(2)} ${(y + radius * Math.sin(angle)).toFixed(2)}`;
  });
  return `M${places.join('L')}Z`;
}

/** Twelve corners of a plus with arms a third as wide as long. */
function plus(x: number, y: number, radius: number, turn: number): string {
  const arm = radius / 3;
  const corners = [0, 1, 2, 3].flatMap((quarter) => {
    const angle = turn + (quarter * Math.PI) / 2;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return [
      [radius, -arm],
      [radius, arm],
      [arm, arm],
    ].map(
      ([along = 0, across = 0]) =>
        `${(x + along * c - across * s).toFixed(2)} ${(y + along * s + across * c).toFixed(2)}`,
    );
  });
  return `M${corners.join('L')}Z`;
}

/** A jar's mark about a place, as a path of about one area whatever its shape. */
export function markPath(shape: MarkShape, x: number, y: number, radius = 5): string {
  switch (shape) {
    case 'circle':
      return `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`;
    case 'square':
      return polygon(x, y, radius * 1.25, 4, Math.PI / 4);
    case 'diamond':
      return polygon(x, y, radius * 1.3, 4, 0);
    case 'triangle':
      return polygon(x, y, radius * 1.4, 3, -Math.PI / 2);
    case 'downward':
      return polygon(x, y, radius * 1.4, 3, Math.PI / 2);
    case 'hexagon':
      return polygon(x, y, radius * 1.15, 6, 0);
    case 'plus':
      return plus(x, y, radius * 1.3, 0);
    case 'cross':
      return plus(x, y, radius * 1.3, Math.PI / 4);
  }
}
