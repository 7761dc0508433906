/** How quantities are written and read: chosen one by one and remembered in this browser, or as is usual where the device says it is. */
import { printFor, type Reader } from '#core/units';
import { language } from './language.svelte.ts';
import { remember, rememberedJson } from '../remember.ts';

export type Quantities = { readonly [Key in keyof Reader]: NonNullable<Reader[Key]> };

/** All that each can be. */
export const CHOICES: { readonly [Key in keyof Quantities]: readonly Quantities[Key][] } = {
	gauge: ['awg', 'iec'],
	long: ['m', 'ft'],
	short: ['mm', 'in'],
	temperature: ['°C', '°F'],
	decimal: ['.', ',']
};

const KEY = 'wireworthy-units';
/** Where feet and degrees Fahrenheit are the usual ones (common practice, no source), and where conductors are sold by AWG. */
const FEET: readonly string[] = ['US', 'LR', 'MM'];
const FAHRENHEIT: readonly string[] = ['US', 'LR', 'BS', 'BZ', 'KY', 'PW'];
const AWG: readonly string[] = ['US', 'CA'];

/** What is usual where this language tag is from: "en-US", "de". A tag without a region is taken for where most who use it live. */
export function usualIn(tag: string): Quantities {
	const region = new Intl.Locale(tag).maximize().region ?? '';
	const decimal = new Intl.NumberFormat(tag).formatToParts(1.5).find(({ type }) => type === 'decimal')?.value;
	return {
		gauge: AWG.includes(region) ? 'awg' : 'iec',
		long: FEET.includes(region) ? 'ft' : 'm',
		short: FEET.includes(region) ? 'in' : 'mm',
		temperature: FAHRENHEIT.includes(region) ? '°F' : '°C',
		decimal: decimal === ',' ? ',' : '.'
	};
}

class QuantityChoice {
	#chosen = $state.raw<Partial<Quantities>>({});
	readonly #shown = $derived<Quantities>({ ...usual(), ...this.#chosen });

	/** As on the last visit; from here on everything is printed so. */
	begin(): void {
		this.#chosen = kept();
		printFor(() => this.#shown);
	}

	get shown(): Quantities {
		return this.#shown;
	}

	choose<Key extends keyof Quantities>(key: Key, value: Quantities[Key]): void {
		this.#chosen = { ...this.#chosen, [key]: value };
		remember(KEY, JSON.stringify(this.#chosen));
	}

	/** As is usual again. */
	forget(): void {
		this.#chosen = {};
		remember(KEY, null);
	}

	get isUsual(): boolean {
		return Object.keys(this.#chosen).length === 0;
	}
}

/** The decimal mark goes with the language that is read, everything else with where the device is. */
function usual(): Quantities {
	const device = usualIn(navigator.language);
	return language.chosen === null ? device : { ...device, decimal: usualIn(language.locale).decimal };
}

function kept(): Partial<Quantities> {
	const value = (rememberedJson(KEY) ?? {}) as Record<string, unknown>;
	return Object.fromEntries(
		Object.entries(CHOICES).flatMap(([key, choices]) => ((choices as readonly unknown[]).includes(value[key]) ? [[key, value[key]]] : []))
	);
}

export const quantities = new QuantityChoice();
