/** The list of examples the site serves beside the program. */
import * as z from 'zod';

const ListSchema = z.array(
	z.object({
		id: z.string().regex(/^[a-z0-9-]+$/),
		title: z.string(),
		summary: z.string()
	})
);

export type ExampleEntry = z.infer<typeof ListSchema>[number];

/** Throws when the list cannot be fetched or read. */
export async function fetchExamples(get: typeof fetch = fetch): Promise<readonly ExampleEntry[]> {
	const response = await get('examples/index.json');
	if (!response.ok) throw new Error(`The server answered ${response.status}.`);
	return ListSchema.parse(await response.json());
}
