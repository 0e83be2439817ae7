import 'react';

// Lets a style carry our own properties, such as the colour that a chart is drawn in.
declare module 'react' {
  interface CSSProperties {
    readonly [name: `--${string}`]: string | number | undefined;
  }
}
