import { describe, expect, test } from 'vitest';
import { addConductor, addPart, change, emptyDiagram, type Diagram, type TerminalRef } from '#core/diagram';
import { newParams } from '#core/parts';
import { proposeConductor, proposeGauge } from '../../src/editor/propose-conductor.ts';

function withParts(parts: Record<string, [kind: string, params?: Record<string, never>]>): Diagram {
	return Object.entries(parts).reduce((diagram, [id, [kind, params]]) => {
		const part = { kind, label: id, at: { x: 0, y: 0 }, params: { ...newParams(kind), ...params } };
		return change(diagram, addPart({ id, part })).diagram;
	}, emptyDiagram());
}

const at = (key: string): TerminalRef => ({ part: key.split('.')[0]!, terminal: key.split('.')[1]! });
const params = (values: object) => values as Record<string, never>;

describe('a new conductor', () => {
	// 33 CFR 183.425 Table 5, 105 °C column: 12 AWG 45 A, 6 AWG 120 A, 8 AWG 80 A; 16 AWG 25 A, 18 AWG 20 A.
	test('carries the rating of the fuse it starts from', () => {
		const diagram = withParts({ F1: ['inline-fuse', params({ fuseA: 100 })], E1: ['load', params({ draw: 5 })] });
		expect(proposeGauge(diagram, at('F1.out'), at('E1.pos'))).toEqual({ system: 'awg', size: '6' });
	});

	test('carries the draw of the load it feeds', () => {
		const diagram = withParts({ W1: ['negative-bus'], E1: ['load', params({ draw: 40 })] });
		expect(proposeGauge(diagram, at('E1.neg'), at('W1.1'))).toEqual({ system: 'awg', size: '12' });
	});

	test('of a load in watts carries its current at the nominal voltage', () => {
		// 600 W at 12 V are 50 A: more than the 45 A of 12 AWG, within the 60 A of 10 AWG.
		const diagram = withParts({ W1: ['negative-bus'], E1: ['load', params({ drawAs: 'power', draw: 600 })] });
		expect(proposeGauge(diagram, at('E1.neg'), at('W1.1'))).toEqual({ system: 'awg', size: '10' });
	});

	test('of a return is as thick as the conductor that feeds the load: a short sends what its fuse lets through back', () => {
		const parts = withParts({ F1: ['inline-fuse', params({ fuseA: 100 })], E1: ['load', params({ draw: 5 })], W1: ['negative-bus'] });
		const conductor = { from: at('F1.out'), to: at('E1.pos'), gauge: { system: 'awg' as const, size: '6' as const } };
		const fed = change(parts, addConductor({ id: 'W9', conductor })).diagram;
		expect(proposeGauge(fed, at('E1.neg'), at('W1.1'))).toEqual({ system: 'awg', size: '6' });
	});

	test('is as thick as its widest neighbour where no current is known, and 6 AWG where there is none', () => {
		const diagram = withParts({ B1: ['battery'], Q1: ['battery-disconnect'], W1: ['positive-bus'] });
		expect(proposeGauge(diagram, at('B1.pos'), at('Q1.in'))).toEqual({ system: 'awg', size: '6' });
		const fed = change(
			diagram,
			addConductor({ id: 'W9', conductor: { from: at('B1.pos'), to: at('Q1.in'), gauge: { system: 'iec', size: '95' } } })
		).diagram;
		expect(proposeGauge(fed, at('Q1.out'), at('W1.1'))).toEqual({ system: 'iec', size: '95' });
	});

	test('has the next label, an automatic colour and no length', () => {
		const diagram = withParts({ B1: ['battery'], E1: ['load'] });
		const proposal = proposeConductor(diagram, at('B1.pos'), at('E1.pos'));
		const { diagram: drawn } = change(diagram, proposal.command);
		expect(proposal.key).toBe('conductor:W1');
		expect(drawn.conductors['W1']).toMatchObject({ label: 'W1', colour: 'auto', lengthM: null });
	});
});
