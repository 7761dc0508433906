/**
 * Runs tests for Stryker in one process that loads the core once. Stryker's own runner for Vitest starts a worker and
 * loads some 300 modules for each mutant, half a second of work; the core is pure, so that a mutant is a switch and its
 * tests take milliseconds. Test files are loaded afresh for each mutant, because many build their diagrams while they
 * load. Coverage is kept by test file.
 */
import { register } from 'node:module';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import { globSync } from 'tinyglobby';
import { isThreshold } from './thresholds.mjs';

const stryker = (globalThis.__stryker__ ??= {});

class InPlaceRunner {
	loads = 0;
	/** Milliseconds that a file's tests take when all pass. */
	timeOf = new Map();

	capabilities() {
		return { reloadEnvironment: false };
	}

	async init() {
		register('./resolve.mjs', import.meta.url);
		this.vitest = await import('./vitest-in-place.mjs');
		this.files = globSync(process.env.MUTATION_TESTS.split(' ')).sort();
		// What runs while the core is loaded belongs to no test.
		for (const file of this.files) await this.load(file);
	}

	load(file) {
		const url = `${pathToFileURL(resolve(file)).href}?load=${this.loads++}`;
		return this.vitest.collect(() => import(url));
	}

	/** Runs a file's tests until one fails; returns that failure, or null. */
	async run(file) {
		const started = performance.now();
		try {
			for (const { name, run } of await this.load(file)) {
				try {
					await run();
				} catch (error) {
					return `${name}: ${error.message}`;
				}
			}
		} catch (error) {
			return `${file} does not load: ${error.message}`;
		}
		this.timeOf.set(file, performance.now() - started);
		return null;
	}

	async dryRun() {
		const tests = [];
		for (const file of this.files) {
			stryker.currentTestId = file;
			const started = performance.now();
			const failure = await this.run(file);
			stryker.currentTestId = undefined;
			const test = { id: file, name: file, timeSpentMs: performance.now() - started };
			tests.push(failure === null ? { ...test, status: 0 } : { ...test, status: 1, failureMessage: failure });
		}
		return { status: 'complete', tests, mutantCoverage: stryker.mutantCoverage };
	}

	async mutantRun({ activeMutant, testFilter = this.files, hitLimit: generous }) {
		if (process.env.MUTATION_THRESHOLDS && !isThreshold(activeMutant)) return { status: 'survived', nrOfTests: 0 };
		// Stryker allows a hundred times the usual; in a loop that is never left this takes longer than its patience.
		const hitLimit = generous === undefined ? undefined : Math.max(1000, generous / 20);
		let nrOfTests = 0;
		for (const file of this.quickestFirst(testFilter)) {
			stryker.hitCount = hitLimit === undefined ? undefined : 0;
			stryker.hitLimit = hitLimit;
			stryker.activeMutant = activeMutant.id;
			const failure = await this.run(file);
			stryker.activeMutant = undefined;
			nrOfTests++;
			if (stryker.hitCount > hitLimit) return { status: 'timeout', reason: `Hit limit reached (${stryker.hitCount}/${hitLimit})` };
			if (failure !== null) return { status: 'killed', killedBy: [file], failureMessage: failure, nrOfTests };
		}
		return { status: 'survived', nrOfTests };
	}

	/** Most mutants fall to a quick test. */
	quickestFirst(files) {
		const timeOf = (file) => this.timeOf.get(file) ?? 0;
		return files.toSorted((a, b) => timeOf(a) - timeOf(b));
	}

	async dispose() {}
}
InPlaceRunner.inject = [];

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'in-place', InPlaceRunner)];
