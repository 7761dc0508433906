/** A 2D context that writes down what it was told, one line a call: drawing is tested by its calls, not its pixels. */
import type { Pen } from '../../../src/canvas/paint/compile.ts';

const round = (value: unknown): string => (typeof value === 'number' ? String(Math.round(value * 1000) / 1000) : String(value));

export class FakePath implements Pen {
	readonly calls: string[] = [];
	#log(name: string, ...args: unknown[]): void {
		this.calls.push(`${name} ${args.map(round).join(' ')}`.trim());
	}
	moveTo(x: number, y: number): void {
		this.#log('M', x, y);
	}
	lineTo(x: number, y: number): void {
		this.#log('L', x, y);
	}
	arcTo(x1: number, y1: number, x2: number, y2: number, r: number): void {
		this.#log('arcTo', x1, y1, x2, y2, r);
	}
	arc(x: number, y: number, r: number): void {
		this.#log('arc', x, y, r);
	}
	rect(x: number, y: number, w: number, h: number): void {
		this.#log('rect', x, y, w, h);
	}
	roundRect(x: number, y: number, w: number, h: number, r: unknown): void {
		this.#log('roundRect', x, y, w, h, r);
	}
	closePath(): void {
		this.#log('Z');
	}
}

export interface FakeContext {
	/** Everything painted, with the style it was painted in. */
	readonly trace: string[];
	readonly context: CanvasRenderingContext2D;
}

/** Styles are shown with the fill, stroke or text that used them; setting one draws nothing and is not written down. */
export function fakeContext(): FakeContext {
	const trace: string[] = [];
	let own = new FakePath();
	const style: Record<string, unknown> = {
		globalAlpha: 1,
		lineWidth: 1,
		fillStyle: '#000',
		strokeStyle: '#000',
		font: '',
		textAlign: 'start'
	};
	let dash: readonly number[] = [];
	const alpha = (): string => (style['globalAlpha'] === 1 ? '' : ` @${round(style['globalAlpha'])}`);
	const path = (given?: FakePath): string => `[${(given ?? own).calls.join(', ')}]`;
	const methods: Record<string, (...args: never[]) => void> = {
		beginPath: () => void (own = new FakePath()),
		setLineDash: (next: readonly number[]) => void (dash = next),
		fill: (given?: FakePath) => void trace.push(`fill ${style['fillStyle']}${alpha()} ${path(given)}`),
		stroke: (given?: FakePath) =>
			void trace.push(
				`stroke ${style['strokeStyle']} ${round(style['lineWidth'])}${dash.length ? ` dash ${dash.join(' ')}` : ''}${alpha()} ${path(given)}`
			),
		fillText: (text: string, x: number, y: number) =>
			void trace.push(`text ${style['fillStyle']}${alpha()} "${text}" ${round(x)} ${round(y)}`),
		strokeText: (text: string) => void trace.push(`halo ${style['strokeStyle']} ${round(style['lineWidth'])} "${text}"`)
	};
	const context = new Proxy({} as CanvasRenderingContext2D, {
		get: (_, name: string) =>
			methods[name] ?? (own as unknown as Record<string, (...args: never[]) => void>)[name]?.bind(own) ?? style[name],
		set: (_, name: string, value) => {
			style[name] = value;
			return true;
		}
	});
	return { trace, context };
}
