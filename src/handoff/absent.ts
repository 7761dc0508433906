/** Stands for packages of the PDF writer that are left out (vite.config.ts). */
export default null;
export const decode = null;
