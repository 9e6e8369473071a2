import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const PLACES = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
];

/** Of the browser's own window, which nobody sees: it would load its pages anew with every context; and what a test must not meet. */
const NEEDLESS = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'MediaRouter',
  'OptimizationHints',
  'PreconnectToSearch',
];

const ARGS = [
  `--disable-features=${NEEDLESS.join(',')}`,
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts a Chromium found on this machine, installed by the system's package manager where that may be done. */
export async function launchChromium(): Promise<Browser> {
  const executablePath = findChromium() ?? installChromium();
  return chromium.launch({ executablePath, args: ARGS, headless: true });
}

function findChromium(): string | undefined {
  return PLACES.find((place): place is string => place !== undefined && existsSync(place));
}

function installChromium(): string {
  const mayInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (mayInstall) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    execFileSync('apt-get', ['update', '-qq'], { env, stdio: 'ignore' });
    execFileSync('apt-get', ['install', '-y', '-qq', 'chromium'], { env, stdio: 'ignore' });
  }
  const found = findChromium();
  if (found) return found;
  throw new Error(
    'No Chromium was found: install one (Debian: apt-get install chromium) or name it in the variable CHROMIUM.',
  );
}
