import './icon.css';

/** Line drawings of one weight, 24 units square. */
const drawings = {
  today: 'M4 20h16M7 20v-4a5 5 0 0 1 10 0v4M12 3v3M4.5 7.5l2 2M19.5 7.5l-2 2M2.5 14h2M19.5 14h2',
  trials:
    'M3 21h18M5 8h5M5.5 8v2C5.5 11 4 11.5 4 13.5V18h7v-4.5C11 11.5 9.5 11 9.5 10V8M14 8h5M14.5 8v2c0 1-1.5 1.5-1.5 3.5V18h7v-4.5c0-2-1.5-2.5-1.5-3.5V8',
  recipes: 'M6 3h9l4 4v14H6zM15 3v4h4M9 11h7M9 14h7M9 17h4',
  bases: 'M7 4h10M8 4v3C6 8 4 10 4 13.5V19a2 2 0 0 0 2 2h12a2 2 0 0 0 2-2v-5.5C20 10 18 8 16 7V4M4 14h16',
  pantry:
    'M12 7c0-2.5 1.5-4 4-4M12 8c-4-1.5-7 .5-7 4.5C5 17 8.5 21 12 21s7-4 7-8.5c0-4-3-6-7-4.5zM9.5 12.5v.01M14.5 12.5v.01M12 16v.01',
  tasters: 'M7 3h10l-1 9a4 4 0 0 1-8 0zM12 16v5M8.5 21h7M7.5 8h9',
  data: 'M5 4h14v16H5zM5 9.5h14M5 14.5h14M10.5 6.8h3M10.5 12h3M10.5 17.2h3',
  undo: 'M9 6L4 11l5 5M4 11h10a6 6 0 0 1 6 6v1',
  redo: 'M15 6l5 5-5 5M20 11H10a6 6 0 0 0-6 6v1',
  find: 'M10.5 17a6.5 6.5 0 1 0 0-13 6.5 6.5 0 0 0 0 13zM15.5 15.5L21 21',
  help: 'M3 6h18v12H3zM6 9.5h.01M9.5 9.5h.01M13 9.5h.01M16.5 9.5h.01M7.5 12.5h.01M11 12.5h.01M14.5 12.5h.01M8 15.5h8',
  more: 'M5 7h14M5 12h14M5 17h14',
} as const;

export type IconName = keyof typeof drawings;

/** A drawing beside its word; never alone without a label. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
      <path d={drawings[name]} />
    </svg>
  );
}
