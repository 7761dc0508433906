/** Sentences of the guided starts. */
import { catalogue } from '../language/catalogue.ts';

export const guideTexts = catalogue('guide', {
	title: 'Guided starts',
	about:
		'Each leads through the real drawing: it says what to do and why, points at the place, and goes on by itself once it is done. Leave whenever you like; it goes on from there.',
	begin: 'Begin',
	resume: 'Go on',
	again: 'From the start',
	minutes: (n: number) => `about ${n} minutes`,
	region: (start: string) => `Guided start: ${start}`,
	step: (n: number, of: number) => `Step ${n} of ${of}`,
	skip: 'Skip',
	next: 'Next',
	back: 'Back',
	leave: 'Leave',
	finish: 'Finish',
	wellDone: 'Done.',
	openExample: 'Open the example',
	starts: {
		circuit: {
			title: 'First circuit: battery, fuse, light',
			about: 'Three parts and three conductors on an empty sheet, and what the check says of them.',
			minutes: 4
		},
		bus: {
			title: 'The full bus: land one more circuit',
			about: 'A bus with every place taken, and the ways to land a circuit on it all the same.',
			minutes: 3
		},
		handover: {
			title: 'Hand it over: check and packet',
			about: 'From what the check found to the sheets a stranger can build from.',
			minutes: 3
		}
	},
	steps: {
		circuit: {
			battery: {
				what: 'Put a battery on the sheet: drag it here from Parts, or click it and then its place.',
				why: 'Everything is checked from the source on: what it can drive into a short, and what stops it.'
			},
			fuse: {
				what: 'Put an in-line fuse beside the battery’s plus.',
				why: 'A fuse protects only what lies beyond it. Near the battery, little is left unprotected.'
			},
			light: {
				what: 'Put a load further away: it is a light for now. What it draws stands in Details.',
				why: 'Its current decides how thick the conductors must be, and how large the fuse.'
			},
			feed: {
				what: 'Draw a conductor from the battery’s plus to the fuse: drag from stud to stud. From the keyboard: C on a stud in the Outline, and C on the other.',
				why: 'Each conductor is drawn on its own, because each can be wrong on its own.'
			},
			on: {
				what: 'Draw a conductor from the other end of the fuse to the light’s plus.',
				why: 'From here on the fuse guards the conductor.'
			},
			back: {
				what: 'Draw the way back, from the light’s minus to the battery’s minus.',
				why: 'The return carries the same current and loses volts too. The chassis is no return.'
			},
			lengths: {
				what: 'Select each conductor and enter its length, one way, in Details.',
				why: 'Volts lost and the current into a short follow from the length. Until it is known, one is assumed and you are told so.'
			},
			finding: {
				what: 'Open one of the findings.',
				why: 'It says what is wrong and what to do; opened, also why it matters, by which source, and from which figures it comes.'
			}
		},
		bus: {
			open: {
				what: 'Open a diagram that has a fused distribution bus. The example has one.',
				why: 'What is open now is kept under Diagrams.'
			},
			select: { what: 'Select the bus on the drawing.', why: 'Details then show its positions, and what each of them carries.' },
			ask: {
				what: 'Press “Find room for circuits…” in Details, or the key L.',
				why: 'A place on a bus is more than a free stud: rating, order, cover and fuse all have a say.'
			},
			fill: {
				what: 'Enter the current and the length of the circuit that is to come: 8 A and 3 m, for example.',
				why: 'Its fuse and its conductor are chosen by these.'
			},
			take: {
				what: 'Press “Try every way”, compare what is offered, and take one with “Do this”.',
				why: 'Every way was drawn on a copy and checked with all rules, the refused ones too, with the reason.'
			},
			undo: {
				what: 'Look at what was drawn. If you do not like it: one step of undo takes it all back.',
				why: 'Whatever the program does for you is one step.'
			}
		},
		handover: {
			read: { what: 'Open the first finding.', why: 'They are in order of danger. What stands at the top should go first.' },
			mend: {
				what: 'Take one of the ways to mend it, mend it by hand, or accept it with a reason.',
				why: 'What is handed over with a finding open says so on its first sheet.'
			},
			block: {
				what: 'With nothing selected, fill in Title and Drawn by in the title block, in Details.',
				why: 'They stand on every sheet. A sheet without a name cannot be asked about.'
			},
			packet: {
				what: 'Press “Hand over”.',
				why: 'Drawing, schedules, labels and tests come from the same diagram, so that they cannot contradict one another.'
			},
			save: {
				what: 'Choose the sections and save the PDF, or print. Then close the dialog.',
				why: 'The tests have a blank beside each figure of the model: they are filled in on site.'
			}
		}
	}
});
