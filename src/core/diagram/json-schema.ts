import * as z from 'zod';
import { DiagramSchema } from './schema.ts';

/** The file format as JSON Schema (draft 2020-12), for other programs and for editors of text. */
export const diagramJsonSchema = (): object => z.toJSONSchema(DiagramSchema, { target: 'draft-2020-12', io: 'input' });
