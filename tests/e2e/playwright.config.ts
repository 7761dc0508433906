import { defineConfig } from '@playwright/test';
import { CHROMIUM_FLAGS, findChromium } from './chromium.mjs';

const PORT = Number(process.env.E2E_PORT ?? 4318);

export default defineConfig({
	testDir: '.',
	outputDir: '../../test-results/browser',
	// Two cores: more workers only make timings wander.
	workers: 2,
	fullyParallel: true,
	timeout: 60_000,
	expect: { timeout: 10_000 },
	reporter: [['line'], ['json', { outputFile: '../../test-results/browser.json' }]],
	use: {
		baseURL: `http://127.0.0.1:${PORT}/`,
		// English, metric, conductors by AWG: what the tests write and read.
		locale: 'en-CA',
		viewport: { width: 1440, height: 900 },
		trace: 'retain-on-failure',
		// Only the tests of offline use have the program kept on the device: others would wait for it.
		serviceWorkers: 'block',
		launchOptions: { executablePath: findChromium() ?? undefined, args: CHROMIUM_FLAGS }
	},
	webServer: {
		command: `npx vite preview --host 127.0.0.1 --port ${PORT} --strictPort`,
		cwd: '../..',
		url: `http://127.0.0.1:${PORT}/`,
		reuseExistingServer: false
	}
});
