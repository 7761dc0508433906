/** Draws routed cases to SVG files, to be looked at: `npx tsx tests/core/routing/draw.ts FOLDER`. */
import { writeFileSync } from 'node:fs';
import { boxOfPoints, inflateBox, unionBoxes } from '#core/geometry';
import { routeConductors } from '#core/routing';
import { crowdedStud, scattered, smallSystem, type Case } from './cases.ts';

const COLOURS = ['#c62828', '#212121', '#1565c0', '#2e7d32', '#ef6c00', '#6a1b9a', '#00838f', '#795548', '#ad1457', '#9e9d24'];

function svgOf({ requests, obstacles }: Case): string {
	const routes = routeConductors(requests, obstacles);
	let bounds = boxOfPoints([...routes.values()].flat());
	for (const { box } of obstacles) bounds = unionBoxes(bounds, box);
	const { minX, minY, maxX, maxY } = inflateBox(bounds, 30);
	const parts = obstacles.map(
		({ id, box: b }) =>
			`<rect x="${b.minX}" y="${b.minY}" width="${b.maxX - b.minX}" height="${b.maxY - b.minY}" fill="#ddd" stroke="#888"/>` +
			`<text x="${(b.minX + b.maxX) / 2}" y="${(b.minY + b.maxY) / 2}" font-size="14" text-anchor="middle">${id}</text>`
	);
	const lines = requests.map(({ id, widthMm }, i) => {
		const points = routes.get(id)!;
		const text = points.map((p) => `${p.x},${p.y}`).join(' ');
		return (
			`<polyline points="${text}" fill="none" stroke="${COLOURS[i % COLOURS.length]}" stroke-width="${widthMm}" stroke-opacity=".8" stroke-linejoin="round"/>` +
			[points[0]!, points.at(-1)!].map((p) => `<circle cx="${p.x}" cy="${p.y}" r="5" fill="#fff" stroke="#000"/>`).join('')
		);
	});
	return `<svg xmlns="http://www.w3.org/2000/svg" width="1600" height="1100" viewBox="${minX} ${minY} ${maxX - minX} ${maxY - minY}" style="background:#fff">${parts.join('')}${lines.join('')}</svg>`;
}

const folder = process.argv[2] ?? '.';
for (const sample of [smallSystem(), crowdedStud(), scattered(30, 1), scattered(80, 2)]) {
	writeFileSync(`${folder}/${sample.name.replaceAll(' ', '-')}.svg`, svgOf(sample));
}
