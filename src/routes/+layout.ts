import { beginReading } from '#ui';

// The editor lives in the browser: there is no server to render it.
export const ssr = false;
export const prerender = false;

export const load = beginReading;
