/** What each rule requires and why it matters, by its id. */
export const RULE_WORDS: Readonly<Record<string, { readonly title: string; readonly why: string }>> = {
	'wire-across-poles': {
		title: 'Nur Verbraucher verbinden Plus mit Minus',
		why: 'Ein Leiter über beide Pole führt den ganzen Kurzschlussstrom der Batterie: er glüht in Sekunden, und was ihn berührt, brennt.'
	},
	'reversed-battery': {
		title: 'Verbundene Batterien zeigen in dieselbe Richtung',
		why: 'Eine verkehrt gepolte Batterie addiert ihre Spannung in einem Ring aus blankem Kupfer: ein Kurzschluss beider zugleich, ohne dass etwas eingeschaltet ist.'
	},
	'unequal-voltage-parallel': {
		title: 'Parallele Stränge haben dieselbe Spannung',
		why: 'Zwei Stränge verschiedener Spannung entladen sich ineinander, nur durch die Leitungen begrenzt.'
	},
	'dangling-conductor': {
		title: 'Beide Enden eines Leiters liegen auf vorhandenen Anschlüssen',
		why: 'Ein Leiter mit einem Ende in der Luft bleibt aus jeder Prüfung, und im Fahrzeug wäre er ein blankes Ende.'
	},
	'unknown-part-kind': {
		title: 'Jedes Teil ist von einer Art, die diese Version kennt',
		why: 'Ein Teil unbekannter Art bleibt in der Datei und aus jeder Prüfung, ebenso die Leiter, die daran enden.'
	},
	'reversed-polarity': {
		title: 'Plusanschlüsse liegen am Pluspol',
		why: 'Verkehrt angeschlossene Elektronik ist sofort zerstört, und ihre Schutzdioden lösen die Sicherung aus oder brennen.'
	},
	'no-return': {
		title: 'Jeder Verbraucher hat einen Rückweg zum Minus seiner Quelle',
		why: 'Der Strom sucht sich den Rückweg durch irgendein Metall, oder der Verbraucher geht nicht. Chassis und Rumpf sind kein Rückleiter.'
	},
	'not-fed': {
		title: 'Jeder Verbraucher wird vom Pluspol gespeist',
		why: 'Ein Verbraucher ohne Zuleitung geht nicht; meist ist ein Leiter vergessen oder eine Sicherung nicht eingesetzt.'
	},
	'half-connected-charger': {
		title: 'Ein Ladegerät liegt an beiden Polen einer Batterie',
		why: 'Ein Ladegerät an nur einem Pol lädt nichts oder findet seinen Rückweg durch das Metall, das die Gehäuse verbindet.'
	},
	'shunt-bypassed': {
		title: 'Der ganze Strom der Batterien fließt durch den Messwiderstand',
		why: 'Der Monitor zählt nur, was durch den Messwiderstand fließt: ein Rückleiter oder Ladegerät auf der Batterieseite verfälscht den Ladezustand jeden Tag.'
	},
	'dead-ended-live-conductor': {
		title: 'Spannungsführende Leiter führen irgendwohin',
		why: 'Ein vergessenes spannungsführendes Ende findet der erste Schraubenschlüssel oder das Wasser. Niemand weiß mehr, dass es Spannung führt.'
	},
	'unconnected-part': {
		title: 'Jedes Teil auf der Zeichnung ist angeschlossen',
		why: 'Ein Teil ohne Leiter gehört weder zur Anlage noch zur Prüfung.'
	},
	'array-beside-controller': {
		title: 'Ein Modulfeld erreicht die Batterie nur über seinen Regler',
		why: 'Am Regler vorbei überlädt das Modulfeld die Batterie, und nachts speist die Batterie die Leiter des Modulfelds.'
	},
	'signal-negatives': {
		title: 'Minuspole von Geräten mit gemeinsamen Signalen sind verbunden',
		why: 'Sind die Minuspole getrennt, sucht sich der Rückstrom den Schirm einer Daten- oder Antennenleitung, die nie dafür gedacht war.'
	},
	'insulated-return': {
		title: 'Eine isolierte Anlage berührt nirgends Metallteile',
		why: 'In einem Metallrumpf frisst ein Irrweg zum Minus den Rumpf; und ein erster Fehler, den eine isolierte Anlage übersteht, wird zum satten Kurzschluss.'
	},
	ring: {
		title: 'Plusleiter bilden keinen Ring, es sei denn mit Absicht',
		why: 'Ein zweifach gespeister Stromkreis bleibt unter Spannung, wenn eine Sicherung ausgelöst hat, und jede führt, womit niemand gerechnet hat.'
	},
	'unprotected-conductor': {
		title: 'Jeder Plusleiter ist an seiner Quelle durch Sicherung oder Automat geschützt',
		why: 'Eine Batterie treibt Tausende Ampere in einen Fehler. Ohne Sicherung hält nichts sie auf, bevor der Leiter glüht.'
	},
	'protection-too-far': {
		title: 'Die Sicherung sitzt am Quellenende ihres Leiters',
		why: 'Eine Sicherung schützt nur, was hinter ihr liegt. Die Länge davor ist so gut wie ungesichert.'
	},
	'two-source-conductor': {
		title: 'Ein Leiter mit einer Quelle an jedem Ende ist an jedem Ende geschützt',
		why: 'Zwei Batterien, oder Batterie und Ladegerät, speisen einen Fehler von beiden Seiten. Eine Sicherung an einem Ende lässt die andere Seite frei.'
	},
	'string-without-fuse': {
		title: 'Jeder parallele Batteriestrang hat eine eigene Sicherung',
		why: 'Eine kurzgeschlossene Zelle oder Leitung in einem Strang wird von allen anderen zugleich gespeist, ganz ohne Sicherung.'
	},
	'oversized-protection': {
		title: 'Eine Sicherung ist nicht größer, als ihr Leiter erlaubt',
		why: 'Eine zu große Sicherung lässt den Leiter stundenlang oder dauernd überhitzen, ohne auszulösen.'
	},
	'undersized-return': {
		title: 'Ein Minusleiter übersteht einen Fehler in dem, woraus er zurückführt',
		why: 'Ein Kurzschluss in einem Verbraucher geht durch den Minusleiter heim: er muss aushalten, was die Sicherung im Plus durchlässt.'
	},
	'fuse-below-load': {
		title: 'Eine Sicherung führt ihren Dauerstrom mit Reserve',
		why: 'Eine Sicherung nahe ihrem Bemessungsstrom altert, heizt ihren Halter und löst bei warmem Wetter grundlos aus; darüber löst sie früher oder später aus.'
	},
	'fuse-over-device-limit': {
		title: 'Ein Gerät ist innerhalb der Grenze seiner Anleitung abgesichert',
		why: 'Die Verdrahtung im Gerät ist dünner als seine Zuleitung: eine zum Leiter passende Sicherung lässt sie innen verbrennen.'
	},
	'critical-circuit-shares-fuse': {
		title: 'Ein kritischer Stromkreis hat eine eigene Sicherung',
		why: 'Ein Fehler in einer Deckslampe darf weder die Positionslichter löschen noch die Lenzpumpe anhalten.'
	},
	'fuse-oversized-for-load': {
		title: 'Eine Sicherung passt zu dem, was sie speist',
		why: 'Der Leiter ist sicher, aber ein blockierter Motor oder ein defektes Gerät nimmt ein Vielfaches auf, bevor die Sicherung es merkt.'
	},
	'main-disconnect-missing': {
		title: 'Batterien lassen sich abschalten',
		why: 'Bei Feuer, Wassereinbruch oder Reparatur muss es einen Griff geben, der den Strom beendet.'
	},
	'switch-in-negative': {
		title: 'Der Batterieschalter einer verbundenen Anlage sitzt im Plus',
		why: 'Ist der Minuspol verbunden, lässt ein Schalter im Minus jeden Plusleiter unter Spannung: ein Fehler zum Chassis hat noch immer seinen Rückweg.'
	},
	'chassis-bond': {
		title: 'Der Minuspol ist durch einen Leiter, der einen Fehler führt, mit dem Chassis verbunden',
		why: 'Ein am Chassis durchgescheuerter Plusleiter muss sofort seine Sicherung auslösen. Ohne Verbindung, oder mit einer dünnen, funkt und brennt er stattdessen.'
	},
	'case-bond': {
		title: 'Das Metallgehäuse eines Wechselrichters oder Ladegeräts ist verbunden',
		why: 'Ein Fehler innen legt Batterie- oder Netzspannung ans Gehäuse. Nur eine Verbindung, so stark wie die Sicherung, löst diese aus.'
	},
	'fuse-in-negative': {
		title: 'Sicherungen und Automaten sitzen im Plus',
		why: 'Bei verbundenem Minus geht ein Fehler vom Plus zum Metall an einer Sicherung im Minus vorbei; und löst sie aus, steht alles dahinter noch unter Spannung.'
	},
	'fuse-voltage-rating': {
		title: 'Eine Sicherung ist für die Spannung ihres Stromkreises gebaut',
		why: 'Bei mehr Volt, als sie verträgt, kann eine Sicherung schmelzen und weiter einen Lichtbogen ziehen: der Kreis bleibt geschlossen, und sie brennt selbst.'
	},
	'interrupt-capacity': {
		title: 'Das Abschaltvermögen reicht für den größten Kurzschlussstrom am Einbauort',
		why: 'Über ihrem Abschaltvermögen kann eine Sicherung bersten und weiter einen Lichtbogen ziehen. Lithium- und große Bleibatterien liefern viele tausend Ampere in einen Kurzschluss.'
	},
	'no-fast-clearing': {
		title: 'Ein Kurzschluss am fernen Ende löst die Sicherung aus, bevor der Leiter leidet',
		why: 'Ein langer dünner Leiter lässt so wenig Strom in den Kurzschluss, dass die Sicherung sich Zeit lässt oder nie auslöst; derweil kocht der Leiter.'
	},
	'selectivity-lost': {
		title: 'Von zwei Schutzgeräten hintereinander löst das dem Fehler nähere zuerst aus',
		why: 'Löst die Batteriesicherung vor der des Stromkreises aus, macht ein Fehler in einer Lampe alles dunkel, Funk und Pumpen auch.'
	},
	'breaker-polarity': {
		title: 'Ein gepolter Automat führt Strom nur in der gekennzeichneten Richtung',
		why: 'Ein Magnet treibt den Lichtbogen in die Löschkammer. Bei umgekehrtem Strom treibt er ihn in die falsche Richtung, und der Automat brennt, statt zu trennen.'
	},
	'auto-reset-breaker': {
		title: 'Ein Automat auf einem Boot wird von Hand zurückgestellt und lässt sich nicht festhalten',
		why: 'Ein Automat, der von selbst wieder schließt, speist den Fehler immer neu, bis etwas brennt.'
	},
	'fuse-value-not-standard': {
		title: 'Eine Sicherung hat einen Wert, den es in ihrer Bauart gibt',
		why: 'Ein Wert, den niemand herstellt, wird am Tag des Einbaus durch irgendeinen ersetzt.'
	},
	'cranking-mark': {
		title: 'Nur die Leiter zwischen Batterie und Anlasser gelten als Anlasserleitung',
		why: 'Eine Anlasserleitung darf ohne Sicherung sein, weil sonst nichts daran hängt. An einem anderen Leiter verdeckt die Angabe, dass er keine hat.'
	},
	'own-leads': {
		title: 'Die eigenen Leitungen eines Geräts halten seine Sicherung aus',
		why: 'Die dünnen Leitungen einer Lampe sind der schwächste Leiter des Kreises: eine nach dem Kabel gewählte Sicherung lässt sie verbrennen.'
	},
	'bus-behind-larger-fuse': {
		title: 'Eine Schiene oder ein Verteiler ist bei seinem Bemessungsstrom geschützt',
		why: 'Ist hinter einem Verteiler alles zugleich an, ist keine einzelne Sicherung überlastet, die Schiene dazwischen aber schon.'
	},
	'stalled-motor': {
		title: 'Die Sicherung eines Motors löst aus, wenn er blockiert',
		why: 'Eine verstopfte Pumpe nimmt ein Mehrfaches auf und fördert kein Wasser, das sie kühlt: sie verbrennt, wenn ihre Sicherung nicht vorher auslöst.'
	},
	'fuse-opens-on-start': {
		title: 'Eine Sicherung hält, während ihr Verbraucher anläuft',
		why: 'Eine Sicherung, die bei manchem Anlauf auslöst, wird in der dritten Nacht durch eine größere ersetzt und schützt dann nichts mehr.'
	},
	'holder-limit': {
		title: 'Sicherung und Leiter passen zu ihrem Halter',
		why: 'Ein Halter über seiner Grenze schmilzt um eine völlig gesunde Sicherung.'
	},
	'breaker-for-ac': {
		title: 'Ein Automat ist für Gleichstrom gebaut',
		why: 'Wechselstrom geht hundertmal in der Sekunde durch null und löscht seinen Lichtbogen selbst; Gleichstrom nicht, und er verbrennt den Automaten.'
	},
	'array-string-fuses': {
		title: 'Parallele Stränge eines Modulfelds können einander nicht verbrennen',
		why: 'Ein verschatteter oder kurzgeschlossener Strang wird von allen anderen rückwärts gespeist; seine Module vertragen nur die Sicherung auf ihrem Typenschild.'
	},
	'array-switch': {
		title: 'Ein Modulfeld lässt sich bei seiner Spannung abschalten',
		why: 'Ein Modulfeld geht nicht aus, solange die Sonne scheint: ein unter Last gezogener Stecker oder Wechselstromschalter zieht einen Lichtbogen, der nicht erlischt.'
	},
	'ignition-source': {
		title: 'Nichts, was funken kann, steht, wo sich Benzin oder Gas sammelt',
		why: 'Ein öffnender Kontakt, eine schmelzende Sicherung oder Motorbürsten entzünden die Dämpfe, die ein kleines Leck in Bilge oder Kasten lässt.'
	},
	'water-protection': {
		title: 'Was im Nassen steht, ist dafür gebaut',
		why: 'Wasser bahnt einen Weg zwischen Bolzen: erst wird das Kupfer grün, dann die Verbindung heiß, dann fließt Strom zum Rumpf.'
	},
	'device-too-hot': {
		title: 'Ein Gerät ist für die Wärme seines Platzes gebaut',
		why: 'Elektronik über ihrer Temperatur schaltet ab oder stirbt; Sicherungen und Automaten lösen grundlos aus.'
	},
	'voltage-collapse': {
		title: 'Die Quellen können die Verbraucher jedes Betriebsfalls speisen',
		why: 'Ein Verbraucher gleichbleibender Leistung nimmt mehr Strom auf, je weiter die Spannung sinkt. Ab einem Punkt reicht kein Strom: die Spannung bricht zusammen, und alles geht aus.'
	},
	'undersized-conductor': {
		title: 'Ein Leiter führt nicht mehr als seine Strombelastbarkeit',
		why: 'Darüber wird ein Leiter heißer, als seine Isolierung verträgt, den ganzen Tag und ohne Fehler: sie verhärtet, reißt, und im Bündel brennt sie.'
	},
	'voltage-drop': {
		title: 'Ein Verbraucher bekommt die Spannung, die er braucht',
		why: 'Lampen werden dunkel, Pumpen langsam, Funkgeräte und Kühlschränke schalten bei Spannungen ab, die die Batterie noch hat.'
	},
	'inverter-low-voltage-current': {
		title: 'Leiter und Sicherung eines Wechselrichters führen seinen Strom bei niedrigster Spannung',
		why: 'Ein Wechselrichter nimmt gleichbleibende Leistung auf: mit sinkender Batteriespannung steigt sein Strom, und was voll geladen reicht, reicht am Ende nicht.'
	},
	'inverter-drop': {
		title: 'Ein Wechselrichter behält seine Spannung unter Last',
		why: 'Was unterwegs verloren geht, bringt seine Abschaltspannung näher: er geht bei halb voller Batterie aus, oder bei jedem anlaufenden Motor.'
	},
	'converter-feeds-itself': {
		title: 'Was einen Wandler speist, sind nicht nur Wandler',
		why: 'Ein Wandler gibt ab, was er aufnimmt, weniger seine Verluste. Aus seinem eigenen Ausgang gespeist, oder in einem Ring von Wandlern, gibt er nichts.'
	},
	'load-in-no-case': {
		title: 'Jeder Verbraucher ist in einem dauernden Betriebsfall eingeschaltet',
		why: 'Ströme, Spannungsfall und Sicherungslasten sind die der Betriebsfälle. Ein Verbraucher, der in keinem eingeschaltet ist, ist gezeichnet, aber nie mitgerechnet.'
	},
	'charging-drop': {
		title: 'Die Spannung eines Ladegeräts erreicht die Batterie',
		why: 'Ein Ladegerät regelt die Spannung an seinen Klemmen: was unterwegs verloren geht, hält es für eine volle Batterie, und die Ladung endet nie.'
	},
	'voltage-class-mismatch': {
		title: 'Batterien geben die Spannung der Anlage, und Geräte bekommen die ihre',
		why: 'Die doppelte Spannung zerstört ein Gerät in Sekunden, oder später mit Feuer; bei der halben geht es nicht.'
	},
	'chassis-used-as-return': {
		title: 'Laststrom kehrt durch Leiter zurück, nicht durch Chassis oder Rumpf',
		why: 'Metallteile sind kein Leiter bekannter Größe: Fugen korrodieren, ein Aluminiumrumpf wird zerfressen, und der Strom findet Wege durch Lager und Schirme.'
	},
	'second-bond': {
		title: 'Der Minuspol ist an einer Stelle mit dem Chassis verbunden',
		why: 'Zwischen zwei Verbindungen liegt das Chassis parallel zum Minusleiter und führt einen Teil seines Stroms, an Messwiderstand und Sicherungen vorbei.'
	},
	'negative-smaller-than-positive': {
		title: 'Der Minusleiter eines Stromkreises ist so dick wie sein Plusleiter',
		why: 'Durch beide geht derselbe Strom; eine spätere größere Sicherung, die zum Plus passt, überlastet dann das Minus.'
	},
	'parallel-conductors': {
		title: 'Parallele Leiter sind gleich und dick',
		why: 'Ungleiche Leiter teilen ungleich: der kürzere oder dickere ist überlastet, während die Sicherung nur die Summe sieht. Löst sich einer, führt der andere alles.'
	},
	'conductor-below-minimum': {
		title: 'Ein Leiter ist dick genug, um zu halten',
		why: 'Sehr dünne Leiter brechen durch Erschütterung an ihren Anschlüssen, lange bevor sie überlastet sind.'
	},
	'bus-overloaded': {
		title: 'Kein Teil einer Schiene führt mehr als ihren Bemessungsstrom',
		why: 'Eine überlastete Schiene heizt alles, was an ihr sitzt: Sicherungen lösen früh aus, Abdeckungen erweichen, Verbindungen lösen sich.'
	},
	'device-overloaded': {
		title: 'Schalter, Relais und Messwiderstände führen nicht mehr als ihren Bemessungsstrom',
		why: 'Ein überlasteter Kontakt heizt, bis er verschweißt oder sein Gehäuse schmilzt; ein Messwiderstand driftet und öffnet dann.'
	},
	'alternator-conductor': {
		title: 'Die Ausgangsleitung einer Lichtmaschine führt deren Bemessungsstrom',
		why: 'An leeren Batterien gibt sie eine Stunde lang alles her, am heißesten Platz, den es gibt.'
	},
	'terminal-temperature': {
		title: 'Ein Leiter bleibt so kühl wie die Anschlüsse, an denen er endet',
		why: 'Ein bis zur Grenze seiner Isolierung genutzter Leiter trägt diese Wärme in den Anschluss, der für weniger gebaut ist.'
	},
	'array-conductors': {
		title: 'Leiter eines Modulfelds führen seinen Strom bei voller Sonne den ganzen Tag',
		why: 'Ein Modulfeld gibt seinen Kurzschlussstrom ab, wann immer die Sonne scheint, und mehr neben Schnee oder Wolkenrändern; dabei löst keine Sicherung aus.'
	},
	'load-voltage': {
		title: 'Ein Gerät hat in jedem Fall die Spannung, die es braucht',
		why: 'Ein Kompressor, der nicht anläuft, brummt und heizt; ein Funkgerät, dessen Spannung beim Senden einbricht, wird nicht gehört. Ein Prozentwert zeigt es nicht.'
	},
	'inverter-ripple': {
		title: 'Die Welligkeit eines Wechselrichters bleibt klein',
		why: 'Ein Wechselrichter zieht seinen Strom in Stößen mit doppelter Netzfrequenz. Was sie unterwegs verlieren, rüttelt an der Spannung von allem anderen und heizt Batterien und Kondensatoren.'
	},
	'no-precharge': {
		title: 'Große Kondensatoren werden sanft geladen',
		why: 'Auf die leeren Kondensatoren eines großen Wechselrichters geschaltet, fließen für einen Augenblick Tausende Ampere: Kontakte verbrennen, und die Batterieelektronik öffnet.'
	},
	'solid-conductor': {
		title: 'Leiter in Fahrzeugen und Booten sind Litzen',
		why: 'Ein massiver Draht biegt sich mit jeder Welle und jedem Schlagloch, bis er in seiner Isolierung bricht.'
	},
	'blocks-not-matched': {
		title: 'Zusammengeschaltete Batterien sind gleich',
		why: 'Ungleiche Batterien laden und entladen ungleich: die eine wird von der anderen überladen oder geleert, und beide fallen früh aus.'
	},
	'mid-point-tap': {
		title: 'Nichts entnimmt oder lädt an einem Teil eines Batteriestrangs',
		why: 'Die Batterien eines Strangs unterscheiden sich dann im Ladezustand: eine wird endgültig entleert, die andere überladen.'
	},
	'string-paths-unequal': {
		title: 'Parallele Batterien teilen den Strom nach ihrer Kapazität',
		why: 'Der Strang mit dem kürzesten Weg arbeitet am härtesten, Tag für Tag: er altert zuerst, und seine Sicherung oder Elektronik öffnet zuerst.'
	},
	'battery-discharge-limit': {
		title: 'Eine Batterie liefert nicht mehr als ihre Dauergrenze',
		why: 'Darüber öffnet die Elektronik einer Lithiumbatterie und alles wird zugleich dunkel; eine Bleibatterie überhitzt und altert.'
	},
	'one-battery-lost': {
		title: 'Fällt eine Batterie aus, tragen die anderen die Last',
		why: 'Batterieelektronik öffnet ohne Warnung. Reicht der Rest nicht, folgen Sicherungen und Elektronik der Reihe nach, und alles wird dunkel.'
	},
	'charge-limit': {
		title: 'Eine Batterie wird mit nicht mehr als ihrem Ladestrom geladen',
		why: 'Zu viel Ladestrom scheidet Lithium ab, lässt Blei gasen oder öffnet die Elektronik, während Ladegerät oder Lichtmaschine drücken.'
	},
	'charge-voltage': {
		title: 'Ein Ladegerät ist auf die Spannung seiner Batterie eingestellt',
		why: 'Ein Zehntelvolt zu viel gast und heizt, zu wenig füllt nie; die falsche Anlagenspannung zerstört oder bewirkt nichts.'
	},
	'energy-shortfall': {
		title: 'Batterien und Quellen decken die Tage der Nutzung',
		why: 'Schneller verbraucht als geladen, endet die Reise früh; oft leergefahren, ist eine Batterie in einer Saison verbraucht.'
	},
	'interlink-thin': {
		title: 'Verbinder in einem Strang sind so dick wie seine Zuleitungen',
		why: 'Der ganze Strom eines Strangs geht durch seine Verbinder, und an eine Sicherung denkt dort niemand.'
	},
	'combiner-current': {
		title: 'Volle und leere Batterien zu verbinden überlastet das Relais nicht',
		why: 'Im Augenblick des Schließens begrenzen nur wenige tausendstel Ohm den Strom: Kontakte verschweißen, oder die Sicherungen beider Seiten lösen aus.'
	},
	'alternator-overloaded': {
		title: 'Eine Lichtmaschine wird nicht stundenlang von Lithiumbatterien voll ausgelastet',
		why: 'Blei nimmt immer weniger auf; Lithium nimmt alles, bis es voll ist. An ihrer Grenze gehalten, verbrennt die Lichtmaschine ihre Wicklungen.'
	},
	'load-dump': {
		title: 'Eine Lichtmaschine behält eine Batterie, die sich nicht selbst abschaltet',
		why: 'Öffnet die Batterie beim Laden, weiß die Lichtmaschine nicht wohin: ihre Spannung springt und nimmt ihre Dioden mit und was eingeschaltet ist.'
	},
	'cold-charging': {
		title: 'Eine Batterie wird nicht kälter geladen, als sie darf',
		why: 'Unter dem Gefrierpunkt scheidet sich Lithium metallisch ab: Kapazität ist für immer weg, und Nadeln können die Zelle kurzschließen.'
	},
	'array-voltage-cold': {
		title: 'Ein Modulfeld bleibt am kältesten Morgen unter der Spannung seines Reglers',
		why: 'Module geben mehr Volt, je kälter sie sind. Der erste klare Sonnenaufgang bei Frost zerstört einen Regler, der den Sommer über gut war.'
	},
	'array-voltage-hot': {
		title: 'Ein Modulfeld lädt auch, wenn es heiß ist',
		why: 'Heiße Module geben weniger Volt. Ein zu kurzer Strang hört mittags im Sommer auf zu laden, wenn am meisten Sonne da ist.'
	},
	'array-current': {
		title: 'Ein Modulfeld bleibt unter dem Strom seines Reglers',
		why: 'Manche Regler begrenzen, was sie nehmen, und verschenken den Rest; andere zerstört ein Kurzschlussstrom, der zu groß ist.'
	},
	'second-source-missing': {
		title: 'Was nicht ausfallen darf, überlebt eine Batterie, die sich selbst abschaltet',
		why: 'Batterieelektronik öffnet, ohne zu fragen. Licht, Alarm und Funk gehen dann zusammen aus, und selten bei schönem Wetter.'
	},
	'battery-place': {
		title: 'Batterien stehen getrennt von Treibstoff und Schlafenden',
		why: 'Eine Batterie gibt Gas ab, wenn etwas schiefgeht, und funkt, wenn an ihren Polen gearbeitet wird.'
	},
	'lug-under-fuse': {
		title: 'Auf einem Sicherungsblock liegt der Kabelschuh über der Sicherung',
		why: 'Der Bolzen ist isoliert, damit Strom ihn nur durch die Sicherung erreicht. Ein Kabelschuh darunter berührt die heiße Seite: er ist ungesichert.'
	},
	'washer-in-current-path': {
		title: 'Scheiben und Muttern liegen über allem, was Strom führt',
		why: 'Eine Scheibe zwischen zwei Kabelschuhen legt ihre schlechten Flächen oder den Bolzen in den Stromweg: die Verbindung heizt unter Volllast.'
	},
	'stud-crowded': {
		title: 'Auf einem Bolzen sitzen höchstens vier Anschlüsse, oder weniger, wenn sein Hersteller es sagt',
		why: 'Jeder weitere bringt eine Verbindung in Reihe, Höhe und eine Möglichkeit, sich zu lösen; einer, der locker ist, lockert alle.'
	},
	'stud-too-short': {
		title: 'Das Gewinde füllt die Mutter und zeigt anderthalb Gänge darüber',
		why: 'Eine nicht gefüllte Mutter reißt aus oder löst sich, und eine lockere Verbindung an einem Batteriebolzen brennt.'
	},
	'block-misuse': {
		title: 'Ein Sicherungsblock oder Aufsatz sitzt auf einem passenden Bolzen, innerhalb der Grenze seiner Platte',
		why: 'Die Platte eines Doppelblocks führt beide Kreise durch eine Verbindung; eine Platte, die nicht passt, hat keine nennenswerte.'
	},
	'adapter-misuse': {
		title: 'Ein Aufsatzbolzen steht selbst auf einem Bolzen, und seine Kabel hebeln nicht an ihm',
		why: 'Ein Aufsatz ist ein längerer Hebel mit einer Verbindung mehr: auf einem anderen Aufsatz, oder unter einem schweren Kabel, löst er sich.'
	},
	'stack-order': {
		title: 'Der größte Strom sitzt zuunterst auf dem Bolzen',
		why: 'Was obenauf liegt, schickt seinen Strom durch jede Verbindung darunter. Die falsche Reihenfolge heizt den ganzen Stapel, mehr noch, wenn die Flächen matt werden.'
	},
	'cover-clearance': {
		title: 'Die Abdeckung schließt über dem, was auf dem Bolzen liegt',
		why: 'Eine Abdeckung, die nicht schließt, bleibt weg, und ein blanker Bolzen wartet auf ein fallendes Werkzeug.'
	},
	'lugs-clash': {
		title: 'Kabelschuhe auf benachbarten Bolzen berühren sich nicht',
		why: 'Ein an den Nachbarn gepresster Kabelschuh liegt nicht plan auf oder überbrückt zwei Sicherungen.'
	},
	'lug-hole': {
		title: 'Das Loch eines Kabelschuhs passt zu seinem Bolzen',
		why: 'Ein aufgebohrtes Loch verliert das Metall, das den Strom führt; ein zu weites lässt den Schuh wandern, und die Scheibe hat nichts zu pressen.'
	},
	torque: {
		title: 'Muttern sind mit ihrem Drehmoment angezogen',
		why: 'Eine zu lockere Mutter ist eine heiße Verbindung; eine zu feste hat begonnen, den Bolzen abzustreifen oder seinen Sockel zu sprengen.'
	},
	'hot-joint': {
		title: 'Verbindungsstellen bleiben kühl',
		why: 'Eine Verbindung, die Watt macht, wird mit dem Alter heißer und macht mehr: Abdeckung, Sicherung und Isolierung daneben gehen zuerst.'
	},
	'bus-order': {
		title: 'Schwere Stromkreise sitzen neben der Einspeisung einer Schiene',
		why: 'Was an der Schiene entlangfließt, heizt jeden Bolzen unterwegs. Nebeneinander heben sich Ladegerät und Wechselrichter auf; an den Enden belasten sie die ganze Schiene.'
	},
	'live-studs-bare': {
		title: 'Spannungsführende Bolzen sind abgedeckt',
		why: 'Ein Schraubenschlüssel vom Bolzen zum Metall ist ein satter Kurzschluss durch die Hand, die nach ihm greift.'
	},
	'colour-fault': {
		title: 'Kein Leiter trägt die Farbe eines anderen Pols',
		why: 'Wer an der Anlage arbeitet, liest den Pol an der Farbe: ein Plusleiter in der Farbe des Minus gilt als spannungslos.'
	},
	'duplicate-label': {
		title: 'Ein Kennzeichen benennt einen Leiter oder ein Teil',
		why: 'Wer später an der Anlage arbeitet, vertraut dem Kennzeichen: bei zwei gleichen wird das falsche abgeklemmt oder abgesichert.'
	},
	'circuit-not-identified': {
		title: 'Jeder abgesicherte Platz sagt, was er speist',
		why: 'Wer im Dunkeln vor dem Verteiler steht, muss die richtige Sicherung sofort finden.'
	},
	'missing-label': {
		title: 'Jeder Leiter hat eine Beschriftung',
		why: 'Einen Leiter ohne Beschriftung findet niemand auf der Zeichnung, der vor ihm steht.'
	},
	'unusable-value': {
		title: 'Jeder Wert eines Teils ist einer, den es haben kann',
		why: 'Die Prüfung rechnet mit dem üblichen Wert weiter und prüft so nicht, was gemeint war.'
	},
	'missing-length': {
		title: 'Jeder Leiter hat eine gemessene Länge',
		why: 'Spannungsfall, Stromteilung zwischen Strängen und der Abstand zur Sicherung hängen alle an der Länge.'
	},
	'one-way-length-doubt': {
		title: 'Längen sind je Leiter für den einfachen Weg eingetragen',
		why: 'Eine hin und zurück eingetragene Länge verdoppelt den Spannungsfall auf dem Papier; eine zu kurze verbirgt ihn.'
	},
	'length-doubt': {
		title: 'Längen stehen in Metern',
		why: 'Eine in Fuß oder Zentimetern getippte Länge macht jeden Spannungsfall, jede Stromteilung und jeden Kurzschlussstrom ihres Kreises falsch.'
	},
	'short-circuit-current-unknown': {
		title: 'Der Kurzschlussstrom jeder Batterie ist bekannt',
		why: 'Ob eine Sicherung einen satten Kurzschluss unterbrechen kann, hängt davon ab, was die Batterie hergibt. Zwei Batterien einer Größe können sich um das Doppelte unterscheiden.'
	},
	'ac-side-not-checked': {
		title: 'Die Netzverdrahtung prüft jemand, der dafür befähigt ist',
		why: 'Netzspannung tötet. Sternpunktverbindung, Fehlerstromschutz und Einspeisung sind hier nicht gezeichnet und nicht angesehen.'
	}
};
