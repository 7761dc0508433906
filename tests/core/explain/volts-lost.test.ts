import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setLevel } from '#core/diagram';
import { voltsLost, type VoltsLost } from '#core/explain';
import { buildStudy } from '#core/rules';
import { circuit } from '../../support/circuit.ts';
import { changed, example, near } from '../../support/examples/figures.ts';

const ladder = (...args: Parameters<typeof voltsLost>): VoltsLost => {
	const found = voltsLost(...args);
	if (!found.ok) throw new Error(found.why);
	return found;
};

describe('the radio of the repaired trailer, against hand figures', () => {
	// 25 A through 4.0 m of 6 AWG each way: 25 × 8.0 × 1.344 mΩ = 0.269 V in copper, 0.323 V from the bus and back;
	// the bus at 12.26 V, the radio at 11.93 V; strings 127.7 A each, all 255.4 A.
	const radio = ladder(example('ridge-post-after'), 'RAD', null, 'peak');
	const lost = (test: (rung: VoltsLost['rungs'][number]) => boolean) => radio.rungs.filter(test).reduce((sum, { volts }) => sum + volts, 0);

	test('its copper loses 0.269 V, half on each side', () => {
		near(
			lost(({ what, amps }) => what === 'conductor' && amps < 26),
			0.269
		);
		near(
			lost(({ what, amps, side }) => what === 'conductor' && amps < 26 && side === 'return'),
			0.269 / 2
		);
	});
	test('its fuse of 40 A loses 25 A × 0.08 V ÷ 40 A = 50 mV, the string’s of 225 A 127.7 × 0.08 ÷ 225 = 45.4 mV', () => {
		near(
			lost(({ what, amps }) => what === 'fuse' && amps < 26),
			0.05
		);
		near(
			lost(({ what, amps }) => what === 'fuse' && amps > 100),
			0.0454
		);
	});
	test('the main switch loses 255.4 A × 0.15 mΩ and the shunt 255.4 A × 0.10 mΩ', () => {
		near(
			lost(({ what }) => what === 'switch'),
			0.0383
		);
		near(
			lost(({ what }) => what === 'shunt'),
			0.0255
		);
	});
	test('it stands at 11.93 V, and the battery’s posts at 13.2 V − 127.7 A × 5 mΩ', () => {
		near(radio.loadV, 11.93);
		near(radio.batteryV, 13.2 - 127.7 * 0.005);
		near(radio.loadA, 25);
	});
	test('begins and ends on one battery, and names what joins on the way', () => {
		expect([radio.from, radio.to]).toEqual(['B1 +', 'B1 −']);
		expect(radio.beside.map(({ amps }) => Math.round(amps))).toContain(128);
		expect(radio.nominalV).toBe(12);
		expect(radio.percentOfNominal).toBeCloseTo(radio.totalV / 0.12, 9);
	});
	test('begins with the fuse on the battery’s post and turns at the load', () => {
		expect(radio.rungs[0]).toMatchObject({ what: 'fuse', subject: { kind: 'part', id: 'FB1' }, side: 'positive' });
		expect(radio.rungs.at(-1)).toMatchObject({ what: 'joint', subject: { kind: 'stud', id: 'B1.neg' }, side: 'return' });
		const sides = radio.rungs.map(({ side }) => side);
		expect(sides.lastIndexOf('positive')).toBe(sides.indexOf('return') - 1);
	});
});

/** Everything that must hold of any ladder. */
function holds(found: VoltsLost): void {
	const sum = found.rungs.reduce((total, { volts }) => total + volts, 0);
	expect(sum + found.remainderV).toBeCloseTo(found.batteryV - found.loadV, 10);
	expect(Math.abs(found.remainderV)).toBeLessThan(1e-8);
	if (found.totalV > 0) expect(found.rungs.reduce((total, { sharePercent }) => total + sharePercent, 0)).toBeCloseTo(100, 6);
	for (const { volts, amps, ohms, heatW } of found.rungs) {
		expect(volts).toBeCloseTo(amps * ohms, 12);
		expect(heatW).toBeCloseTo(volts * amps, 9);
		expect(ohms).toBeGreaterThan(0);
	}
}

/** Two batteries and some loads on posts joined anyhow: a chain on each pole with cross links of any length. */
const mesh = fc
	.record({
		posts: fc.integer({ min: 2, max: 6 }),
		links: fc.array(fc.record({ a: fc.nat(5), b: fc.nat(5), lengthM: fc.integer({ min: 1, max: 9 }) }), { maxLength: 8 }),
		draws: fc.array(fc.record({ at: fc.nat(5), watts: fc.integer({ min: 5, max: 120 }) }), { minLength: 1, maxLength: 4 })
	})
	.map(({ posts, links, draws }) => {
		const parts: Parameters<typeof circuit>[0] = { b1: ['battery'], b2: ['battery', { capacityAh: 60, resistanceMilliohm: 9 }] };
		const wires: [string, string, { lengthM: number }][] = [];
		for (const pole of ['p', 'n']) {
			for (let i = 0; i < posts; i++) {
				parts[`${pole}${i}`] = ['link-post'];
				if (i > 0) wires.push([`${pole}${i - 1}.stud`, `${pole}${i}.stud`, { lengthM: 1 + i / 3 }]);
			}
			for (const { a, b, lengthM } of links)
				if (a % posts !== b % posts) wires.push([`${pole}${a % posts}.stud`, `${pole}${b % posts}.stud`, { lengthM }]);
			const post = pole === 'p' ? 'pos' : 'neg';
			wires.push([`b1.${post}`, `${pole}0.stud`, { lengthM: 1 }], [`b2.${post}`, `${pole}${posts - 1}.stud`, { lengthM: 2 }]);
			draws.forEach(({ at }, i) => wires.push([`${pole}${at % posts}.stud`, `l${i}.${post}`, { lengthM: 2 }]));
		}
		draws.forEach(({ watts }, i) => (parts[`l${i}`] = ['load', { drawAs: 'power', draw: watts }]));
		return circuit(parts, wires);
	});

describe('rungs and remainder add up to battery volts less load volts', () => {
	test.each(['ridge-post', 'pagemoor', 'otters-reach', 'skarv-fell'].flatMap((name) => [`${name}-before`, `${name}-after`]))(
		'for every load in every case of %s',
		(name) => {
			const study = buildStudy(example(name));
			let found = 0;
			for (const { id } of study.cases)
				for (const { part, link } of study.network.loads) {
					const answer = voltsLost(study, part, link, id);
					if (!answer.ok) continue;
					holds(answer);
					found++;
				}
			expect(found).toBeGreaterThan(5);
		}
	);

	test('for loads of any mesh', () => {
		let found = 0;
		fc.assert(
			fc.property(mesh, (diagram) => {
				const study = buildStudy(diagram);
				for (const { id } of study.cases)
					for (const { part, link } of study.network.loads) {
						const answer = voltsLost(study, part, link, id);
						if (!answer.ok) continue;
						holds(answer);
						found++;
					}
			}),
			{ numRuns: 60 }
		);
		expect(found).toBeGreaterThan(60);
	});
});

describe('where there is no ladder, it says why', () => {
	const diagram = circuit({ b: ['battery'], l: ['load'], x: ['load'] }, [
		['b.pos', 'l.pos'],
		['l.neg', 'b.neg']
	]);
	const why = (...args: Parameters<typeof voltsLost>) => {
		const found = voltsLost(...args);
		return found.ok ? null : found.why;
	};
	test('a load not fed, one switched off, a part without a load, a case that is not there', () => {
		expect(why(diagram, 'x', null, 'on')).toBe('X is not fed in "on".');
		expect(why(changed(diagram, setLevel({ case: 'on', part: 'l', level: 0 })), 'l', null, 'on')).toBe('L draws nothing in "on".');
		expect(why(diagram, 'b', null, 'on')).toBe('This part draws nothing by itself.');
		expect(why(diagram, 'l', null, 'none')).toBe('There is no such operating case.');
	});
});

test('a load on a converter’s rail is followed to the converter', () => {
	const study = buildStudy(
		circuit(
			{ b: ['battery', { nominalV: 24 }], c: ['dcdc-converter', { maxA: 20, setV: 12 }], l: ['load', { draw: 5 }] },
			[
				['b.pos', 'c.in-pos'],
				['b.neg', 'c.in-neg'],
				['c.out-pos', 'l.pos', { gauge: '12', lengthM: 3 }],
				['c.out-neg', 'l.neg', { gauge: '12', lengthM: 3 }]
			],
			{ nominalV: 24 }
		)
	);
	const found = ladder(study, 'l', null, 'on');
	expect(found).toMatchObject({ fedBy: 'source', nominalV: 12, from: 'C output +' });
	// 2 × (3 m × 5.40 mΩ/m + 2 × 0.2 mΩ) × 5 A
	expect(found.totalV).toBeCloseTo(5 * 2 * (3 * 0.0054 + 0.0004), 3);
	holds(found);
});
