import { readFile } from 'node:fs/promises';
import type { Protocol } from 'electron';
import { isPageAddress, pageScheme } from '#hosts/ipc/page-address.ts';
import { presentPageFile } from '#hosts/page-files.ts';
import { pagePolicy } from '#hosts/page-policy.ts';

/** Makes app:// an origin of its own, as trustworthy as https. Only counts before Electron is ready. */
export function declarePageScheme(protocol: Pick<Protocol, 'registerSchemesAsPrivileged'>): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: pageScheme, privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } },
  ]);
}

function refusal(status: number): Response {
  return new Response(null, { status, headers: { ...pagePolicy } });
}

/** Answers one address of the page's origin: a file of the built page with its policy, or a refusal. */
export async function answerPage(root: string, { method, url }: { method: string; url: string }): Promise<Response> {
  if (method !== 'GET' && method !== 'HEAD') return refusal(405);
  const file = isPageAddress(url) ? presentPageFile(root, new URL(url).pathname) : null;
  if (file === null) return refusal(404);
  let body: Buffer<ArrayBuffer>;
  try {
    body = await readFile(file.path);
  } catch {
    return refusal(404);
  }
  return new Response(method === 'HEAD' ? null : body, { headers: { ...pagePolicy, 'Content-Type': file.type } });
}

/** Serves the built page, and nothing else of this machine, under app://. */
export function servePage(protocol: Pick<Protocol, 'handle'>, root: string): void {
  protocol.handle(pageScheme, (request) => answerPage(root, request));
}
