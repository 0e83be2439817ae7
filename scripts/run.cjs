// The first thing every npm script runs. Plain JavaScript without dependencies: it must work on any Node from 18 up,
// before anything is installed. It installs when the lock file is new, then hands over to the Node that came along.
const { createHash } = require('node:crypto');
const { existsSync, readFileSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');
const { spawn, spawnSync } = require('node:child_process');

const root = join(__dirname, '..');
const modules = join(root, 'node_modules');
const stamp = join(modules, '.sidejar-installed');
const oldest = [22, 12];

function say(line) {
  process.stderr.write(`${line}\n`);
}

function lockHash() {
  const hash = createHash('sha256').update(readFileSync(join(root, 'package-lock.json')));
  return hash.update(`${process.platform} ${process.arch}`).digest('hex');
}

function isInstalled(hash) {
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === hash;
}

function install(hash) {
  say('Installing what Sidejar needs (once; about a minute) …');
  // npm tells its scripts where it lives; run by hand, it is on the PATH.
  const npm = process.env.npm_execpath;
  const [command, args] = npm && /\.c?js$/.test(npm) ? [process.execPath, [npm]] : ['npm', []];
  const done = spawnSync(command, [...args, 'ci', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', process.stderr, process.stderr],
    shell: command === 'npm' && process.platform === 'win32',
  });
  if (done.status !== 0) {
    say('The installation failed: see the lines above. Nothing was started.');
    process.exit(1);
  }
  writeFileSync(stamp, hash);
}

/**
 * Node reads TypeScript by way of WebAssembly, in each thread for itself. When two threads warm up the same call out of it at once, V8
 * may end the program (“Check failed: jit_page.has_value()”, seen with Node 24.21): so those calls are never warmed up.
 */
const calmWrappers = '--wasm-wrapper-tiering-budget=2000000000';

/** The Node that came with the dependencies, or this one where it is new enough. */
function findNode() {
  const name = process.platform === 'win32' ? 'node.exe' : 'node';
  const os = process.platform === 'win32' ? 'win' : process.platform;
  const brought = join(modules, `node-${os}-${process.arch}`, 'bin', name);
  if (existsSync(brought)) return { file: brought, flags: [calmWrappers] };
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > oldest[0] || (major === oldest[0] && minor >= oldest[1])) {
    const stripsTypes = major > 22 || minor >= 18;
    return {
      file: process.execPath,
      flags: stripsTypes ? [] : ['--experimental-strip-types', '--disable-warning=ExperimentalWarning'],
    };
  }
  say(
    `Sidejar needs Node ${oldest.join('.')} or newer here (no Node came along for ${process.platform} ${process.arch}); this is ${process.versions.node}. Install a current Node and try again.`,
  );
  process.exit(1);
}

const hash = lockHash();
if (!isInstalled(hash)) install(hash);
const node = findNode();
// What Node made of the sources is kept for the next start, which is the quicker for it.
const env = { NODE_COMPILE_CACHE: join(modules, '.cache', 'compiled'), ...process.env };
const child = spawn(node.file, [...node.flags, ...process.argv.slice(2)], { cwd: root, stdio: 'inherit', env });
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  // The child ends by itself and tidies up; this process waits for its exit code.
  process.on(signal, () => child.kill(signal));
}
child.on('exit', (code, signal) => process.exit(signal ? 1 : (code ?? 1)));
