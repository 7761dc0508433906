import type { Translation } from './translation.ts';
import type { useTexts } from '../use/use-texts.ts';

export const useDe: Translation<typeof useTexts> = {
	title: 'Betriebsfälle und Energie',
	tabs: 'Was zu sehen ist',
	cases: 'Betriebsfälle',
	energy: 'Energie eines Tages',
	openCases: 'Fälle als Tabelle',
	openEnergy: 'Energie eines Tages',

	table: {
		label: 'Was in jedem Fall eingeschaltet ist',
		hint: 'Prozent der Bemessungsaufnahme oder -leistung; ein leeres Feld folgt der Zeile „Alle“. Pfeiltasten gehen durch die Tabelle; Enter übernimmt die Eingabe.',
		part: 'Teil',
		none: 'Noch kein Fall. Ein Fall sagt, was eingeschaltet ist: ohne ihn ist kein Strom bekannt. Einen leeren hinzufügen oder einen Vorschlag nehmen.',
		add: 'Fall hinzufügen',
		suggested: 'Vorgeschlagen',
		suggest: (name) => `„${name}“ hinzufügen`,
		duplicate: (name) => `„${name}“ kopieren`,
		copyName: (name) => `${name}, Kopie`,
		remove: (name) => `„${name}“ entfernen`,
		name: (name) => `Name von „${name}“`,
		duration: (name) => `Wie lange „${name}“ dauert`,
		battery: (name) => `Batterien in „${name}“`,
		all: { loads: 'Alle Verbraucher', sources: 'Alle Quellen' },
		cell: (part, name) => `${part} in „${name}“`,
		starts: (part, name) => `${part} läuft in „${name}“ an`,
		startsShort: 'läuft an',
		results: 'Was sich ergibt',
		figures: {
			battery: 'Batterien liefern',
			loading: 'Am stärksten belasteter Leiter',
			volts: 'Verbraucher mit der niedrigsten Spannung'
		},
		noPoint: 'keine Spannung, bei der alle versorgt sind',
		waiting: '…'
	},

	day: {
		use: 'Am Tag verbraucht',
		bring: 'Am Tag geladen',
		bank: 'Die Batterien dürfen geben',
		lasts: 'Reicht allein',
		lastsWith: 'Reicht mit den Quellen',
		chart: (use, bring, usable) => `Am Tag werden ${use} verbraucht und ${bring} geladen; die Batterien dürfen ${usable} geben.`,
		days: (days) => `${days} Tage`,
		noLimit: 'ohne Ende',
		nothing: 'noch kein Verbrauch angegeben',
		begin:
			'Jedem Verbraucher die Stunden am Tag geben, die er läuft, und jedem Ladegerät die Stunden, die es lädt: daraus folgt, wie lange die Batterien reichen. Was nicht angegeben ist, zählt nicht.',
		loads: 'Verbraucher',
		sources: 'Laden',
		batteries: 'Batterien',
		total: 'Zusammen',
		part: 'Teil',
		given: 'Angegeben',
		notGiven: 'zählt nicht: Stunden fehlen',
		elsewhere: 'nicht aus diesen Batterien gespeist',
		noLoads: 'Noch kein Verbraucher, der zählen könnte. Verbraucher auf das Blatt setzen und hier ihre Stunden am Tag angeben.',
		noSources:
			'Noch lädt nichts die Batterien: ein Solarladeregler, eine Lichtmaschine, ein Netz- oder Ladewandler täte es, mit seinen Stunden am Tag.',
		noBank: 'Noch keine Batterie. An ihnen wird der Tag gemessen.',
		keptForEngine: 'zum Anlassen zurückgehalten: zählt nicht',
		show: 'Befund zeigen'
	}
};
