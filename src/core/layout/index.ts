/** Where everything is on the drawing: poses of parts (mounted blocks follow their host), positions of terminals. */
export {};
