// Which room may import which. The dependency check and tests/architecture both read this one list.

/** Pure numerical libraries that the core may use. Add to this list openly, with the reason in the commit. */
const pureNumericalLibraries = ['@stdlib/'];

/** A module of Node itself, as the checks write it: fs, worker_threads, fs/promises. */
const builtin = `^(${require('node:module')
  .builtinModules.filter((name) => !name.startsWith('_'))
  .map((name) => name.replace(/^node:/, ''))
  .join('|')})$`;

const rooms = [
  {
    name: 'core',
    files: '^core/',
    may: ['^core/', ...pureNumericalLibraries.map((name) => `^node_modules/${name}`)],
    door: 'core is pure: it may import only core and the numerical libraries listed in scripts/doors.cjs. Bring data in as arguments; the desk (#desk/…) joins store and core.',
  },
  {
    name: 'shared',
    files: '^shared/',
    may: ['^shared/', '^core/', '^node_modules/zod'],
    door: 'shared holds what both sides agree on: it may import zod and types of core (#core/…), nothing with a machine under it.',
  },
  {
    name: 'store',
    files: '^electron/store/',
    may: [
      '^electron/store/',
      '^core/',
      '^shared/',
      '^node_modules/(better-sqlite3|@types/better-sqlite3)',
      '^node:',
      builtin,
    ],
    door: 'the store may import core, shared and better-sqlite3. Whoever needs the desk or Electron belongs in #desk/… or #shell/….',
  },
  {
    name: 'desk',
    files: '^electron/desk/',
    may: [
      '^electron/desk/',
      '^electron/store/',
      '^core/',
      '^shared/',
      '^node_modules/zod',
      '^node_modules/papaparse',
      '^node_modules/@types/papaparse',
      builtin,
    ],
    door: 'the desk joins store (#store/…) and core (#core/…) and answers the contract (#shared/…). It never sees a window or a socket: that is #hosts/….',
  },
  {
    name: 'hosts',
    files: '^electron/hosts/(?!ipc/)',
    may: ['^electron/hosts/(?!ipc/)', '^electron/desk/', '^shared/', '^core/words/', '^node_modules/zod', builtin],
    door: 'a host carries requests to the desk (#desk/…) in the contract’s shapes (#shared/…). Only electron/hosts/ipc may import electron.',
  },
  {
    name: 'ipc host',
    files: '^electron/hosts/ipc/',
    may: [
      '^electron/hosts/',
      '^electron/desk/',
      '^shared/',
      '^core/words/',
      '^node_modules/electron',
      '^electron$',
      builtin,
    ],
    door: 'the ipc host carries requests between Electron and the desk (#desk/…); windows and menus are #shell/….',
  },
  {
    name: 'shell',
    files: '^electron/(shell/|main\\.ts$|preload\\.ts$)',
    may: [
      '^electron/(shell/|main\\.ts$|preload\\.ts$)',
      '^electron/hosts/',
      '^shared/',
      '^core/words/',
      '^node_modules/electron',
      '^electron$',
      builtin,
    ],
    door: 'the shell owns windows and menus and asks the desk through a host (#hosts/…), never the store or the core itself.',
  },
  {
    name: 'renderer',
    files: '^renderer/',
    may: [
      '^renderer/',
      '^shared/',
      '^core/(units|ferment|trial|recipe|pantry|words)/',
      '^core/[^/]+\\.ts$',
      '^node_modules/(react|react-dom|@types/react|@types/react-dom|@tanstack/react-query|wouter|recharts|zod|@fontsource-variable/.+|vite)/',
    ],
    door: 'the page may import React and its libraries, #shared/…, and of the core units, ferment, trial, recipe and words. Panel statistics are asked of the desk: use ask() from #renderer/app/ask.ts.',
  },
];

const rules = [
  ...rooms.map((room) => ({
    name: `door-${room.name.replace(' ', '-')}`,
    severity: 'error',
    comment: room.door,
    from: { path: room.files },
    to: { pathNot: room.may },
  })),
  {
    name: 'pages-are-apart',
    severity: 'error',
    comment: 'Pages do not import each other: what two pages share belongs in #renderer/parts/… or #renderer/charts/….',
    from: { path: '^renderer/pages/([^/]+)/' },
    to: { path: '^renderer/pages/', pathNot: '^renderer/pages/$1/' },
  },
  {
    name: 'nothing-imports-tests',
    severity: 'error',
    comment: 'Tests import the program, never the other way round.',
    from: { pathNot: '^tests/' },
    to: { path: '^tests/' },
  },
];

module.exports = { rooms, rules, pureNumericalLibraries };
