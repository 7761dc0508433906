/** Language and units of the window. */
import { language, type OtherLanguages } from './language.svelte.ts';
import { quantities } from './quantities.svelte.ts';

const OTHERS: OtherLanguages = {
	de: () => import('../de/index.ts')
};

/** Before anything is shown: as on the last visit, or as the device says. */
export async function beginReading(): Promise<void> {
	quantities.begin();
	await language.begin(OTHERS);
}
