import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, posix, relative } from 'node:path';

export const root = join(import.meta.dirname, '..', '..');

/** One import: which file, and what it leads to (a file of the project, `node_modules/<package>/`, or a module of Node). */
export interface Edge {
  readonly from: string;
  readonly to: string;
  readonly written: string;
}

const rooms = ['core', 'shared', 'electron', 'renderer', 'scripts', 'tests'];

/** Every source file of the project, as a path from its root with forward slashes. */
export function sourceFiles(folders: readonly string[] = rooms): string[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(ts|tsx|cjs|css)$/.test(entry.name))
      .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/')),
  );
}

const subpaths = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).imports as Record<string, string>;

function resolved(from: string, written: string): string {
  if (written.startsWith('.')) return posix.join(dirname(from), written);
  for (const [door, folder] of Object.entries(subpaths)) {
    const start = door.replace('*', '');
    if (written.startsWith(start)) return posix.normalize(folder.replace('*', written.slice(start.length)));
  }
  if (written.startsWith('node:') || builtinModules.includes(written)) return written.replace('node:', '');
  const [scope = '', name = ''] = written.split('/');
  return `node_modules/${scope.startsWith('@') ? `${scope}/${name}` : scope}/`;
}

const importPattern =
  /(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*['"]([^'"]+)['"]|import\s*\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)\s*import\s*['"]([^'"]+)['"]/g;

/** The imports written in a text, types included. */
export function edgesIn(from: string, text: string): Edge[] {
  return [...text.matchAll(importPattern)].map((match) => {
    const written = match[1] ?? match[2] ?? match[3] ?? '';
    return { from, written, to: resolved(from, written) };
  });
}

export function allEdges(): Edge[] {
  return sourceFiles()
    .filter((file) => /\.tsx?$/.test(file))
    .flatMap((file) => edgesIn(file, readFileSync(join(root, file), 'utf8')));
}
