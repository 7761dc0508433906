/**
 * Short-circuit currents of four whole systems against sums done by hand: resistances of battery, fuse, joints, copper
 * (0.01787 Ω·mm²/m over ASTM B258 areas), switch and shunt added up, and volts divided by them. The sums use copper in
 * service and leave chargers out, the program cold copper and chargers at their limit: 10 % between them.
 */
import { describe, expect, test } from 'vitest';
import { faultsOf, type Faults } from '#core/faults';
import { buildNetwork } from '#core/network';
import type { Diagram } from '#core/diagram';
import { ottersReachAfter } from '../../support/examples/otters-reach.ts';
import { pagemoorAfter } from '../../support/examples/pagemoor.ts';
import { ridgePostAfter } from '../../support/examples/ridge-post.ts';
import { skarvFellAfter } from '../../support/examples/skarv-fell.ts';

function system(diagram: Diagram) {
	const network = buildNetwork(diagram);
	const faults: Faults = faultsOf(network, diagram.conductors);
	const node = (stud: string): number => {
		const found = network.nodeOf.get(stud);
		if (found === undefined) throw new Error(`There is no stud "${stud}".`);
		return found;
	};
	return {
		at: (stud: string): number => faults.short(node(stud), 'greatest')!.currentA,
		shareOf: (stud: string, link: string): number =>
			Math.abs(faults.short(node(stud), 'greatest')!.branchA(network.branches[network.branchOfLink.get(link)!]!)),
		through: (link: string): number => faults.throughDevice(network.branches[network.branchOfLink.get(link)!]!).currentA
	};
}

const within10Percent = (found: number, byHand: number): void => {
	expect(Math.abs(found / byHand - 1), `${found} A against ${byHand} A by hand`).toBeLessThan(0.1);
};

describe('a 12 V trailer with two lithium blocks in parallel', () => {
	const s = system(ridgePostAfter());
	// Strings 1.25 + 0.356 + 2 × (0.265 × 0.45 + 0.08) = 2.00 mΩ, two in parallel; main conductors and joints 0.82 mΩ: 13.6 V / 1.82 mΩ.
	test('bus', () => within10Percent(s.at('D.L'), 7460));
	test('each string in a fault at the bus', () => within10Percent(s.shareOf('D.L', 'FB1.fuse'), 3730));
	// 13.6 V over 2.94, 7.0, 14.7 and 19.4 mΩ.
	test.each([
		['INV.pos', 4630],
		['PAN.feed', 1940],
		['RAD.pos', 923],
		['DDC.out-pos', 700]
	])('end of the run at %s', (stud, byHand) => within10Percent(s.at(stud), byHand));
	// 13.6 V / 1.25 mΩ: the first fuse sits on the post.
	test('first fuse', () => within10Percent(s.through('FB1.fuse'), 10_880));
	test('fuses on the bus see what the bus has', () => within10Percent(s.through('D.fuse-3'), 7460));
});

describe('a 24 V library with four lead-acid blocks in two strings', () => {
	const s = system(pagemoorAfter());
	// String 6.0 + 0.16 + 0.53 + 0.56 = 7.26 mΩ, main 1.27: 26.4 V / 4.90 mΩ.
	test('bus', () => within10Percent(s.at('D.L'), 5390));
	// 26.4 V / 6.16 mΩ: two blocks and the link between them.
	test('first fuse of a string', () => within10Percent(s.through('FS1.fuse'), 4280));
	test('end of the lift’s run', () => within10Percent(s.at('LIFT.pos'), 2190));
});

describe('a 12 V workboat with a start battery and a house bank', () => {
	// The sums are for each bank alone: the relay that joins them is taken out.
	const whole = ottersReachAfter();
	const conductors = Object.fromEntries(Object.entries(whole.conductors).filter(([id]) => !['K2p', 'K3a', 'K3b', 'K3n'].includes(id)));
	const s = system({ ...whole, conductors });
	// 12.9 V / 3.2 mΩ at the posts; cables 2 × 2.2 × 0.334 and joints, 1.78 mΩ, to the starter.
	test('start battery', () => within10Percent(s.at('SB.pos'), 4030));
	test('starter', () => within10Percent(s.at('STR.pos'), 2590));
	test('house bus', () => within10Percent(s.at('D.L'), 4210));
	test('first fuse of the house bank', () => within10Percent(s.through('FH1.fuse'), 3440));
	test('end of the capstan’s run', () => within10Percent(s.at('CAP.pos'), 1340));
});

describe('a 48 V station with two lithium blocks in parallel', () => {
	const s = system(skarvFellAfter());
	// String 11.97 mΩ, main 1.42: 54.4 V / 7.41 mΩ.
	test('bus', () => within10Percent(s.at('FH.R'), 7340));
	test('first fuse', () => within10Percent(s.through('FB1.fuse'), 5440));
	test.each([
		['HTR.pos', 477],
		['C24.in-pos', 2510],
		['INV.pos', 4120]
	])('end of the run at %s', (stud, byHand) => within10Percent(s.at(stud), byHand));
});
