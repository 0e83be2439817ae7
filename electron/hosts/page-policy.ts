// What the built page may do, said in response headers. Every host that serves the page sends all of them.

const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  // The charts place their marks with style attributes.
  "style-src 'self' 'unsafe-inline'",
  // Charts become pictures by way of blob: and data: addresses.
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Device features that the page never needs; writing to the clipboard is left alone, for copying charts. */
const unusedFeatures = [
  'accelerometer',
  'camera',
  'display-capture',
  'geolocation',
  'gyroscope',
  'hid',
  'idle-detection',
  'local-fonts',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'serial',
  'usb',
  'xr-spatial-tracking',
];

/**
 * Response headers that keep the page to its own files and its own desk.
 *
 * Method: everything is refused first, then what the page uses is let in by name.
 * Leaves out the content type, which belongs to each file (`pageFile`).
 *
 * @example new Response(body, { headers: { ...pagePolicy, 'Content-Type': file.type } })
 */
export const pagePolicy: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'X-Frame-Options': 'DENY',
  'Permissions-Policy': unusedFeatures.map((feature) => `${feature}=()`).join(', '),
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};
