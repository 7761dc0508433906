/** Runs before anything else of the page. */
import { trustOwnAddresses } from './trusted.ts';

trustOwnAddresses();
