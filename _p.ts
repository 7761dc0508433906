import { parseDiagram } from '#core/diagram';
import { composeScene } from '#core/drawing';
import { countText } from '#core/check';
import { reportInput, sectionsOf } from '#core/reports';
import { packetPdf } from '#handoff';
import { readFileSync, writeFileSync } from 'node:fs';
const fonts = { regular: new Uint8Array(readFileSync('static/fonts/dejavu-sans-condensed.ttf')), bold: new Uint8Array(readFileSync('static/fonts/dejavu-sans-condensed-bold.ttf')) };
const [,, name, paper, drawingPaper, placing] = process.argv as any;
for (const n of name.split(',')) {
const r = parseDiagram(readFileSync('static/examples/'+n+'.json','utf8')); if (!r.ok) throw 1;
const t0 = performance.now(); const input = reportInput(r.diagram); const sections = sectionsOf(input); const t1 = performance.now();
const p = await packetPdf({ diagram: r.diagram, scene: composeScene(r.diagram), sections, verdict: `Checked against ${input.check.profileName}: ${countText(input.check.findings)}.` }, { paper, drawingPaper, placing }, fonts);
writeFileSync(`/tmp/ww/packet/${n}-${paper}-${placing}.pdf`, new Uint8Array(p.bytes)); console.log(n, p.sheets, p.bytes.byteLength, p.missing, Math.round(t1-t0), Math.round(performance.now()-t1)); }
