/** Where current, resistance, volts and heat of the joints on a stud come from: what the layers above bring, over the faces between. */
import type { CaseId, StudKey } from '#core/diagram';
import { stackCurrents, type Study } from '#core/rules';
import { HARDWARE_OHM, faceOhm, jointsIn, jointsOf, type Joint, type Stack, type TerminalCurrents } from '#core/studs';
import { caseLabel, SOLVED } from './branch.ts';
import type { Explanation, Input } from './explanation.ts';
import type { FigureId, JointFigure } from './figure-id.ts';
import { explanation, input } from './write-out.ts';

interface Of {
	readonly key: StudKey;
	/** Null: each joint in the case in which it is hottest. */
	readonly caseId: CaseId | null;
}

interface Found {
	readonly study: Study;
	readonly of: Of;
	readonly stack: Stack;
	readonly currents: TerminalCurrents;
	readonly joints: readonly Joint[];
}

const CLEAN = 'common practice, no source: clean faces at the right torque';

/** @param above layer over the joint, as an index into the stack's layers */
export function explainJoint(study: Study, of: Of, above: number, figure: JointFigure): Explanation | null {
	const found = find(study, of);
	const joint = found?.joints.find((other) => other.above === above);
	return found && joint ? BY_FIGURE[figure](found, joint) : null;
}

/** Heat of all joints of a stud together. */
export function explainJoints(study: Study, of: Of): Explanation | null {
	const found = find(study, of);
	if (!found || found.joints.length === 0) return null;
	const inputs = found.joints.map((joint, index) =>
		input(`P${index + 1}`, `heat ${place(found, joint)}`, joint.heatW, 'W', {
			origin: 'computed',
			source: CLEAN,
			figure: figureOf(found, joint, 'heat'),
			confidence: 'common-practice'
		})
	);
	return explanation({
		symbol: 'P',
		name: `Heat in the joints of ${study.studName(of.key)}`,
		value: found.joints.reduce((sum, { heatW }) => sum + heatW, 0),
		unit: 'W',
		words: of.caseId === null ? 'That of every joint, each in the case in which it is hottest.' : 'That of every joint.',
		expression: inputs.map(({ symbol }) => symbol).join(' + '),
		inputs,
		caseName: of.caseId === null ? null : caseLabel(study, of.caseId),
		source: CLEAN
	});
}

function find(study: Study, of: Of): Found | null {
	const stack = study.stack(of.key);
	if (!stack) return null;
	const currents = stackCurrents(study, stack);
	const isKnown = of.caseId === null || currents.byCase.some(({ caseId }) => caseId === of.caseId);
	if (!isKnown || currents.byCase.length === 0) return null;
	const joints = of.caseId === null ? jointsOf(stack, currents) : jointsIn(stack, currents, of.caseId);
	return { study, of, stack, currents, joints };
}

const figureOf = ({ of }: Found, { above }: Joint, figure: JointFigure): FigureId => ({ of: 'joint', ...of, above, figure });

const layerName = ({ stack }: Found, layer: number | null): string => (layer === null ? 'the seat' : stack.layers[layer]!.label);

const place = (found: Found, { below, above }: Joint): string => `between ${layerName(found, below)} and ${layerName(found, above)}`;

const common = (found: Found, joint: Joint, what: string) => ({
	name: `${what} ${place(found, joint)} on ${found.study.studName(found.of.key)}`,
	caseName: joint.caseId === null ? null : caseLabel(found.study, joint.caseId)
});

const own = (found: Found, joint: Joint) => ({
	current: input('I', 'current through the joint', joint.currentA, 'A', {
		origin: 'computed',
		source: SOLVED,
		figure: figureOf(found, joint, 'current')
	}),
	resistance: input('R', 'resistance of the joint', joint.resistanceOhm, 'Ω', {
		origin: 'computed',
		source: CLEAN,
		figure: figureOf(found, joint, 'resistance'),
		confidence: 'common-practice'
	})
});

const BY_FIGURE: { readonly [Figure in JointFigure]: (found: Found, joint: Joint) => Explanation } = {
	current(found, joint) {
		const brought = broughtAbove(found, joint);
		const which = found.of.caseId === null ? ', in the case in which it is largest' : '';
		return explanation({
			...common(found, joint, 'Current'),
			symbol: 'I',
			value: joint.currentA,
			unit: 'A',
			words: `What everything above the joint brings, less what it takes away${which}.`,
			expression: brought.length === 0 ? '0' : `abs(${brought.map(({ symbol }) => symbol).join(' + ')})`,
			inputs: brought,
			source: SOLVED
		});
	},
	resistance(found, joint) {
		const { terminal } = found.stack;
		const hardware = joint.above - (joint.below ?? -1) - 1;
		const face = input('Rf', `two clean faces under one ${terminal.thread} nut`, faceOhm(terminal.thread!), 'Ω', {
			origin: 'table',
			source: CLEAN,
			confidence: 'common-practice'
		});
		const washers = [
			input('n', 'washers and nuts between them', hardware, '', { origin: 'diagram', source: 'the stack as drawn' }),
			input('Rw', 'what each of them adds', HARDWARE_OHM, 'Ω', { origin: 'table', source: CLEAN, confidence: 'common-practice' })
		];
		return explanation({
			...common(found, joint, 'Resistance'),
			caseName: null,
			symbol: 'R',
			value: joint.resistanceOhm,
			unit: 'Ω',
			words: 'That of the faces by thread, and of any washer or nut the current has to pass. A dull face has several times as much.',
			expression: hardware === 0 ? 'Rf' : 'Rf + n * Rw',
			inputs: hardware === 0 ? [face] : [face, ...washers],
			source: CLEAN
		});
	},
	volts(found, joint) {
		const { current, resistance } = own(found, joint);
		return explanation({
			...common(found, joint, 'Volts lost'),
			symbol: 'U',
			value: joint.dropV,
			unit: 'V',
			words: 'Current times resistance.',
			expression: 'I * R',
			inputs: [current, resistance],
			source: CLEAN
		});
	},
	heat(found, joint) {
		const { current, resistance } = own(found, joint);
		return explanation({
			...common(found, joint, 'Heat'),
			symbol: 'P',
			value: joint.heatW,
			unit: 'W',
			words: 'The square of the current times the resistance.',
			expression: 'I ^ 2 * R',
			inputs: [current, resistance],
			source: CLEAN
		});
	}
};

/** What lugs and block plates above a joint bring, in its case; negative what they take away. */
function broughtAbove({ stack, currents }: Found, { above, caseId }: Joint): Input[] {
	const injectedA = currents.byCase.find((values) => values.caseId === caseId)?.injectedA ?? [];
	return injectedA.flatMap((amps, position) => {
		const layer = currents.layers[position]!;
		if (layer < above) return [];
		return [input(`I${layer + 1}`, `brought by ${stack.layers[layer]!.label}`, amps, 'A', { origin: 'computed', source: SOLVED })];
	});
}
