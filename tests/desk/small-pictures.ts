// Pictures of one pixel and heads of other files, as bytes.

/** The smallest JPEG that decoders take: one grey pixel, baseline. */
export const onePixelJpeg = Buffer.from(
  '/9j/2wBDAP//////////////////////////////////////////////////////////////////////////////////////wAALCAABAAEBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAAA//EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AN//Z',
  'base64',
);

/** One transparent pixel. */
export const onePixelPng = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

/** The head of a lossy WebP of 640 × 480 (RFC 9649 2.5, RFC 6386 9.1). */
export function webpHead(width = 640, height = 480): Buffer {
  const bytes = Buffer.alloc(40);
  bytes.write('RIFF', 0, 'latin1');
  bytes.writeUInt32LE(32, 4);
  bytes.write('WEBPVP8 ', 8, 'latin1');
  bytes.writeUInt32LE(20, 16);
  bytes.set([0x9d, 0x01, 0x2a], 23);
  bytes.writeUInt16LE(width, 26);
  bytes.writeUInt16LE(height, 28);
  return bytes;
}

export const heicHead = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic\0\0\0\0mif1heic', 'latin1')]);
export const programHead = Buffer.concat([Buffer.from('MZ\u0090\0', 'latin1'), Buffer.alloc(300)]);

/** A JPEG with an EXIF part in front that tells where it was taken: "GPSLatitude" stands in it as a text to look for. */
export function jpegWithPlace(jpeg: Buffer): Buffer {
  // TIFF, little-endian: one entry, the pointer to a GPS directory (tag 8825) with latitude reference and latitude (Exif 2.32, 4.6.6).
  const tiff = Buffer.alloc(26 + 2 + 24 + 4 + 24);
  tiff.write('II', 0, 'latin1');
  tiff.writeUInt16LE(42, 2);
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(1, 8);
  tiff.writeUInt16LE(0x8825, 10);
  tiff.writeUInt16LE(4, 12);
  tiff.writeUInt32LE(1, 14);
  tiff.writeUInt32LE(26, 18);
  tiff.writeUInt16LE(2, 26);
  tiff.writeUInt16LE(1, 28);
  tiff.writeUInt16LE(2, 30);
  tiff.writeUInt32LE(2, 32);
  tiff.write('N\0', 36, 'latin1');
  tiff.writeUInt16LE(2, 40);
  tiff.writeUInt16LE(5, 42);
  tiff.writeUInt32LE(3, 44);
  tiff.writeUInt32LE(56, 48);
  for (const [place, value] of [51, 1, 30, 1, 0, 1].entries()) tiff.writeUInt32LE(value, 56 + 4 * place);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff, Buffer.from('GPSLatitude', 'latin1')]);
  const head = Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 4);
  return Buffer.concat([head, body, jpeg.subarray(2)]);
}
