// Draws client/media/icon.png from icon.svg: `node .build/icon.mjs`.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { chromiumPath } from '../test/editor/host/ensure.mjs';

const media = join(dirname(fileURLToPath(import.meta.url)), '..', 'client', 'media');
const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage({ viewport: { width: 128, height: 128 } });
await page.setContent(`<body style="margin:0">${readFileSync(join(media, 'icon.svg'), 'utf8')}</body>`);
await page.locator('svg').screenshot({ path: join(media, 'icon.png'), omitBackground: true });
await browser.close();
