import { useMemo } from 'react';
import { encodeQr } from './encode-qr.ts';
import './qr-code.css';

/** The light margin that a reader needs, in modules. Source: ISO/IEC 18004:2015, 6.3.8. */
const quiet = 4;

/** A QR code as a drawing that fills its place; dark on white whatever the theme is. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const { path, size } = useMemo(() => {
    const modules = encodeQr(text);
    const dark = modules.flatMap((row, down) =>
      row.flatMap((isDark, right) => (isDark ? [`M${right + quiet} ${down + quiet}h1v1h-1z`] : [])),
    );
    return { path: dark.join(''), size: modules.length + 2 * quiet };
  }, [text]);
  return (
    <svg className="qr-code" viewBox={`0 0 ${size} ${size}`} shapeRendering="crispEdges" role="img" aria-label={label}>
      <path d={path} />
    </svg>
  );
}
