import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allEdges, type Edge, edgesIn, root, sourceFiles } from './imports.ts';

interface Room {
  name: string;
  files: string;
  may: string[];
  door: string;
}
const { rooms } = createRequire(import.meta.url)('../../scripts/doors.cjs') as { rooms: Room[] };
const edges = allEdges();

/** An import that goes through no door, with the sentence that names the right one. */
function wrongDoor({ from, to }: Edge): string | null {
  const room = rooms.find(({ files }) => new RegExp(files).test(from));
  if (room === undefined || room.may.some((allowed) => new RegExp(allowed).test(to))) return null;
  return `${from} imports ${to}: ${room.door}`;
}

/** The first cycle among the project's own files, as a path that ends where it began. */
function findCycle(all: readonly Edge[]): string[] | null {
  const next = new Map<string, string[]>();
  for (const { from, to } of all) next.set(from, [...(next.get(from) ?? []), to]);
  const done = new Set<string>();
  const visit = (file: string, trail: string[]): string[] | null => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return null;
    for (const to of next.get(file) ?? []) {
      const cycle = visit(to, [...trail, file]);
      if (cycle !== null) return cycle;
    }
    done.add(file);
    return null;
  };
  for (const file of next.keys()) {
    const cycle = visit(file, []);
    if (cycle !== null) return cycle;
  }
  return null;
}

describe('the house', () => {
  it('has imports to look at, and each leads somewhere', () => {
    expect(edges.length).toBeGreaterThan(300);
    const lost = edges.filter(
      ({ to }) => /^(core|shared|electron|renderer|scripts|tests)\//.test(to) && !existsSync(join(root, to)),
    );
    expect(lost).toEqual([]);
  });

  it('is entered only through its doors', () => {
    expect(edges.map(wrongDoor).filter((problem) => problem !== null)).toEqual([]);
  });

  it('would notice a wrong door in every room', () => {
    const wrong: [string, string][] = [
      ['core/panel/x.ts', "import { openKitchen } from '#store/open-kitchen.ts';"],
      ['core/units/x.ts', "import { z } from 'zod';"],
      ['core/units/x.ts', "import { readFileSync } from 'node:fs';"],
      ['shared/contract/x.ts', "import type { Kitchen } from '#store/kitchen.ts';"],
      ['electron/store/x.ts', "import { app } from 'electron';"],
      ['electron/store/x.ts', "import { deskOf } from '#desk/desk.ts';"],
      ['electron/desk/x.ts', "import { app } from 'electron';"],
      ['electron/desk/x.ts', "import { openDeskLine } from '#hosts/desk-line.ts';"],
      ['electron/hosts/loopback/x.ts', "import { app } from 'electron';"],
      ['electron/shell/x.ts', "import { openKitchen } from '#store/open-kitchen.ts';"],
      ['renderer/app/x.tsx', "import { analysePanel } from '#core/panel/analyse.ts';"],
      ['renderer/app/x.tsx', "import { openKitchen } from '#store/open-kitchen.ts';"],
      ['renderer/app/x.tsx', "import fs from 'node:fs';"],
    ];
    for (const [from, text] of wrong) {
      const [edge] = edgesIn(from, text);
      expect(edge && wrongDoor(edge), `${from}: ${text}`).toContain(from);
    }
  });

  it('has no cycle', () => {
    const own = edges.filter(({ to }) => !to.startsWith('node_modules/'));
    expect(findCycle(own)).toBeNull();
    expect(
      findCycle([
        { from: 'a', to: 'b', written: '' },
        { from: 'b', to: 'a', written: '' },
      ]),
    ).toEqual(['a', 'b', 'a']);
  });

  it('has pages that do not import each other, and nothing that imports tests', () => {
    const page = (file: string) => /^renderer\/pages\/([^/]+)\//.exec(file)?.[1];
    const between = edges.filter(
      ({ from, to }) => page(from) !== undefined && page(to) !== undefined && page(from) !== page(to),
    );
    expect(between).toEqual([]);
    expect(edges.filter(({ from, to }) => to.startsWith('tests/') && !from.startsWith('tests/'))).toEqual([]);
  });

  it('crosses rooms by subpath, never by climbing', () => {
    expect(edges.filter(({ written }) => written.startsWith('../../'))).toEqual([]);
  });

  it('keeps files small: core 150 lines, elsewhere 300; tables of figures and fixtures exempt', () => {
    const large = sourceFiles()
      .filter(
        (file) => !/(-table|-catalogue)\.ts$/.test(file) && !/\/fixtures\//.test(file) && !/\/migrations\//.test(file),
      )
      .map((file) => ({ file, lines: readFileSync(join(root, file), 'utf8').split('\n').length - 1 }))
      .filter(({ file, lines }) => lines > (file.startsWith('core/') ? 150 : 300));
    expect(large).toEqual([]);
  });

  it('has no default exports outside configuration and no vague names', () => {
    const files = sourceFiles();
    expect(files.filter((file) => /(^|\/)(utils?|helpers?|common|misc|managers?)([./-]|$)/.test(file))).toEqual([]);
  });
});
