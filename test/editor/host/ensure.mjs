// Makes sure that all the editor tests need is there, and fetches only what is missing. Runs under Node 20 or later.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..', '..');

/** Runs a command, shows its output, and ends this process with a plain message when it fails. */
function run(command, args, cwd, env = process.env) {
  console.log(`> ${command} ${args.join(' ')}`);
  const { status, error } = spawnSync(command, args, { cwd, env, stdio: 'inherit' });
  if (status !== 0) {
    console.error(`could not run ${command} ${args.join(' ')}: ${error?.message ?? `exit code ${status}`}`);
    process.exit(2);
  }
}

/** The browser that shows the editor: BOREWRIGHT_CHROMIUM, or Debian's package. */
export function chromiumPath() {
  return process.env.BOREWRIGHT_CHROMIUM ?? '/usr/bin/chromium';
}

/** Node 24 from the project's own packages: the tools need Node 22 or later, whatever the machine has. */
export function node24Path() {
  return join(root, 'node_modules', 'node', 'bin', 'node');
}

export function hostPath() {
  return join(here, 'node_modules', 'code-server', 'lib', 'vscode');
}

export function ensureNode24() {
  const works = () => {
    try {
      return Number(execFileSync(node24Path(), ['-p', 'process.versions.node.split(".")[0]'])) >= 22;
    } catch {
      return false;
    }
  };
  if (works()) return;
  // The binary is put in place by the package's install step, which npm may have been told to leave out.
  run('npm', ['rebuild', 'node', '--foreground-scripts', '--ignore-scripts=false'], root);
  if (!works()) run('node', ['installArchSpecificPackage.js'], join(root, 'node_modules', 'node'));
  if (!works()) {
    console.error('Node 24 could not be put in place. Install Node 22 or later yourself and run this again.');
    process.exit(2);
  }
}

export function ensureChromium() {
  if (existsSync(chromiumPath())) return;
  if (process.platform !== 'linux' || process.getuid?.() !== 0) {
    console.error(`${chromiumPath()} is missing: install Chromium, or name yours in BOREWRIGHT_CHROMIUM.`);
    process.exit(2);
  }
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  run('apt-get', ['update', '-q'], root, env);
  run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'], root, env);
}

export function ensureHost() {
  const lock = readFileSync(join(here, 'package-lock.json'), 'utf8');
  const stamp = join(here, 'node_modules', '.installed-from');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  // Install steps are left out: they would compile optional native parts that the tests do without.
  run('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], here);
  // Its own lock file lacks an entry, which `npm ci` refuses.
  run('npm', ['install', '--omit=dev', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], hostPath());
  writeFileSync(stamp, lock);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureNode24();
  ensureChromium();
  ensureHost();
}
