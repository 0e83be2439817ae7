import { realpathSync, statSync } from 'node:fs';
import { extname, resolve, sep } from 'node:path';

/** A file of the built page: where it lies and what to call it to a browser. */
export interface PageFile {
  readonly path: string;
  readonly type: string;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
};

/** One plain name: not empty, not hidden, no step upwards, nothing that some system reads as a drive or a folder. */
const plainName = /^[^.\\/:*?"<>|][^\\/:*?"<>|]*$/;
/** Names that Windows takes for devices, whatever their ending. */
const deviceName = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

function isPlainName(name: string): boolean {
  for (const character of name) if (character < ' ' || character === '\u007f') return false;
  return plainName.test(name) && !deviceName.test(name);
}

function decodedOnce(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}

/**
 * Finds the file of the built page that an address means, and never one outside the page's folder.
 *
 * Method: the path is cut at its slashes, each part is percent-decoded exactly once and must be a plain name; the
 * result must still lie inside `root`. `/` means `index.html`. Only the kinds of file that a build makes are known.
 * Leaves out whether the file exists and where links lead: see `presentPageFile`.
 *
 * @param root folder of the built page
 * @param urlPath path of the address as it came, still percent-encoded, without query or fragment
 * @returns absolute path and content type; null when the address means no file of the page
 * @example pageFile('/opt/page', '/assets/page.js') // { path: '/opt/page/assets/page.js', type: 'text/javascript; charset=utf-8' }
 */
export function pageFile(root: string, urlPath: string): PageFile | null {
  if (!urlPath.startsWith('/')) return null;
  const encoded = urlPath === '/' ? ['index.html'] : urlPath.slice(1).split('/');
  const names: string[] = [];
  for (const part of encoded) {
    const name = decodedOnce(part);
    if (name === null || !isPlainName(name)) return null;
    names.push(name);
  }
  const folder = resolve(root);
  const path = resolve(folder, ...names);
  const type = types[extname(path).toLowerCase()];
  if (type === undefined || !path.startsWith(folder.endsWith(sep) ? folder : folder + sep)) return null;
  return { path, type };
}

/**
 * Finds a file of the built page that is really there: a plain file whose own place, links followed, lies in the page's folder.
 *
 * @returns as `pageFile`; null also where there is no such file, or a link leads out of `root`
 * @example presentPageFile('/opt/page', '/assets/none.js') // null
 */
export function presentPageFile(root: string, urlPath: string): PageFile | null {
  const file = pageFile(root, urlPath);
  if (file === null) return null;
  try {
    const path = realpathSync(file.path);
    return path.startsWith(realpathSync(root) + sep) && statSync(path).isFile() ? { ...file, path } : null;
  } catch {
    return null;
  }
}
