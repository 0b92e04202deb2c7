import type { Sayings } from "../../said.ts";

export const LEARNT: Sayings = {
  "{0} expected": "{0} esperados",
  "{0} found": "{0} encontrados",
  "{0} found on {1} parts": "{0} encontrados en {1} piezas",
  short: "cortocircuito",
  drift: "deriva",
  "Faults found, against those that {0} in the same jobs; within these ends nine times in ten.":
    "Fallos encontrados, frente a los que {0} en los mismos trabajos; entre estos extremos nueve veces de cada diez.",
  "Sorts of parts": "Tipos de piezas",
  "the tables expect": "esperan las tablas",
  "After one cause": "Tras una causa",
  "their sort leads to expect": "hace esperar su tipo",
  "In one family of boards": "En una familia de placas",
  "sort and cause lead to expect": "hacen esperar el tipo y la causa",
  "Parts of one board": "Piezas de una placa",
  "their sort leads to expect in that family": "hace esperar su tipo en esa familia",
  "How parts fail": "Cómo fallan las piezas",
  "Shares of the modes, before and now.": "Proporción de cada modo, antes y ahora.",
  "How parts fail in one family": "Cómo fallan las piezas en una familia",
  "Shares of the modes, everywhere and there.": "Proporción de cada modo, en todas partes y allí.",
  "What one fault brings with it": "Qué trae consigo un fallo",
  "Chance that the second follows the first.": "Probabilidad de que el segundo siga al primero.",
  "Minutes here": "Minutos aquí",
  "Times the minutes of the job format; the next job is planned with them.":
    "Veces los minutos del formato de trabajo; con ellos se planifica el próximo.",
  "On good boards beside those of the jobs; the next job on such a board counts with it.":
    "En placas buenas junto a las de los trabajos; el próximo trabajo en una placa así cuenta con ello.",
  "Prices paid": "Precios pagados",
  "New parts, in the job's currency.": "Piezas nuevas, en la moneda del trabajo.",
  "{0} timed, {1} pauses left out": "{0} cronometrados, {1} pausas excluidas",
  "{0}: {1} red {2}, black {3}": "{0}: {1} rojo {2}, negro {3}",
  "{0} bought": "{0} compradas",
  "Parts nobody has seen:": "Piezas que nadie ha visto:",
  "Nets that end at one pin:": "Nodos que acaban en una sola patilla:",
  "No net ends at one pin.": "Ningún nodo acaba en una sola patilla.",
  "Rails without a source:": "Líneas sin fuente:",
  "Every rail has a source.": "Cada línea tiene su fuente.",
  "Values that nobody sells:": "Valores que nadie vende:",
  "Every value is one that is sold.": "Todos los valores se venden.",
  "{0}: {1}; the nearest is {2}": "{0}: {1}; el más cercano es {2}",
  "Parts whose price can decide whether a repair pays, and has none (taken instead, of a new board):":
    "Piezas cuyo precio puede decidir si compensa reparar, y no lo tienen (se toma en su lugar, de una placa nueva):",
  "Every part whose price can decide has one.": "Cada pieza cuyo precio puede decidir lo tiene.",
  "Parts that no cold check tells apart as long as nothing is lifted:":
    "Piezas que ninguna medida en frío distingue mientras no se levante nada:",
  "Cold checks tell every shorted or open part that they show from every other.":
    "Las medidas en frío distinguen entre sí todas las piezas en cortocircuito o abiertas que muestran.",
  "{0} faults (shorts and opens) show in no cold check; they need a lift, a look, or power.":
    "{0} fallos (cortocircuitos y abiertos) no se ven en ninguna medida en frío; necesitan levantar, mirar o dar tensión.",
  "no single lifted pin parts them": "levantar una sola patilla no las separa",
  "lift {0}: {1}": "levantar {0}: {1}",
  "decoupling: {0}": "desacoplo: {0}",
  "clamp: {0}": "limitador: {0}",
  "pull-down: {0}": "a masa: {0}",
  "through: {0}": "a través de: {0}",
  "gate of {0}: {1}": "puerta de {0}: {1}",
  "rail {0}: {1} to {2}, {3}": "línea {0}: {1} a {2}, {3}",
  "from {0}": "desde {0}",
  "rectifier: {0}": "rectificador: {0}",
  "bulk: {0}": "reserva: {0}",
  "feeds: {0}": "alimenta: {0}",
  "bus: none found": "bus: no encontrado",
  "bus: {0} to {1} (by its inverter legs)": "bus: {0} a {1} (por las ramas del inversor)",
  "bus: {0} to {1} (by its largest capacitor)": "bus: {0} a {1} (por el mayor condensador)",
  "off-line switcher: {0}": "conmutador de red: {0}",
  "off-line switcher: {0} into {1}": "conmutador de red: {0} hacia {1}",
  "mains side: {0}": "lado de red: {0}",
  "line fuses: {0}": "fusibles de línea: {0}",
  "inrush: {0}": "limitación de arranque: {0}",
  "bridges: {0}": "puentes: {0}",
  "bus capacitors: {0}": "condensadores del bus: {0}",
  "boost: switch {0}, diode {1}, reactor {2}": "elevador: conmutador {0}, diodo {1}, bobina {2}",
  "resonant: switch {0}, coil {1}, capacitor: {2}": "resonante: conmutador {0}, bobina {1}, condensador: {2}",
  "motor switch {0}: {1}, phase {2}": "conmutador del motor {0}: {1}, fase {2}",
  "shunts: {0}": "shunts: {0}",
  "controller {0}: fed by {1}": "controlador {0}: alimentado por {1}",
  "title: {0}": "título: {0}",
  "found: nothing that it came in with": "encontrado: nada con lo que llegara",
  "found: {0}": "encontrado: {0}",
  "broke when power came on (entry {0}): {1}": "se rompió al dar tensión (entrada {0}): {1}",
  "entries kept: {0} of {1}; notes, names, reasons, ids and what was undone are left out, times begin on 1 January 2000":
    "entradas conservadas: {0} de {1}; se omiten notas, nombres, motivos, identificadores y lo deshecho, las horas empiezan el 1 de enero de 2000",
  "terms kept: none": "condiciones conservadas: ninguna",
  "terms kept: {0}": "condiciones conservadas: {0}",
  "proposed way: {0} steps": "camino propuesto: {0} pasos",
  "the job is still open: close it first": "el trabajo sigue abierto: cerrarlo primero",
  "this job found no fault: nothing was replaced and nothing is likelier faulty than not":
    "este trabajo no encontró ningún fallo: no se cambió nada y nada es más probable que esté averiado que sano",
  "the proposed way did not end within {0} steps": "el camino propuesto no terminó en {0} pasos",
  "the practice bench has no answer to {0} without two places":
    "el banco de prácticas no responde a {0} sin dos puntos",
  "the practice bench has no answer to {0}": "el banco de prácticas no responde a {0}",
  "{0} is a cold mode; unpower the board first": "{0} es un modo en frío; quitar antes la tensión",
  "no reading: {0}": "sin lectura: {0}",
  "under power nobody can tell from the board file the {0} of {1}":
    "con tensión nadie puede saber por el archivo de la placa el {0} de {1}",
  "nothing to learn from: {0}": "nada que aprender: {0}",
  "a shorted switch shorts its partner at the next gate pulse":
    "un conmutador en cortocircuito pone en corto a su pareja en el siguiente pulso de puerta",
  "mostly one leg of a module goes short; it may take another in the same case":
    "casi siempre cae una rama del módulo; puede llevarse otra del mismo encapsulado",
  "a short behind the rectifier opens the line fuse unless a limiter stood in its path":
    "un corto tras el rectificador abre el fusible de línea, salvo que hubiera un limitador en su camino",
  "a varistor that shorts opens the fuse before it":
    "un varistor en cortocircuito abre el fusible que lo precede",
  "what shorted the varistor also reached the bridge and the small supply":
    "lo que puso en corto el varistor llegó también al puente y a la fuente auxiliar",
  "fault current takes a bridge junction with it": "la corriente de fallo se lleva una unión del puente",
  "a steady short overheats the inrush limiter": "un corto permanente recalienta el limitador de arranque",
  "the board ran through its inrush limiter": "la placa funcionó a través de su limitador de arranque",
  "the current of a shorted leg cracks the shunt under it":
    "la corriente de una rama en corto agrieta el shunt que tiene debajo",
  "a shorted motor shorts a leg": "un motor en cortocircuito pone en corto una rama",
  "ripple of a dry bus capacitor stresses the switches":
    "el rizado de un condensador de bus seco castiga los conmutadores",
  "a shorted capacitor of a series pair leaves all the voltage to its partner":
    "un condensador en corto de un par en serie deja toda la tensión a su pareja",
  "a shorted brake switch leaves its resistor across the bus":
    "un conmutador de frenado en corto deja su resistencia en paralelo con el bus",
  "bus voltage breaks through to the gate: resistor open, clamp shorted":
    "la tensión del bus llega a la puerta: resistencia abierta, limitador en corto",
  "a shorted switch has lost its gate too": "un conmutador en corto también ha perdido su puerta",
  "through the gate into the driver": "por la puerta hasta el excitador",
  "a shorted switch inside a module takes the driver beside it":
    "un conmutador en corto dentro de un módulo se lleva el excitador contiguo",
  "a dead driver leaves a gate half on: its switch shorts":
    "un excitador muerto deja una puerta a medias: su conmutador entra en corto",
  "a dry bootstrap or drive-rail capacitor lets a switch run linear":
    "un condensador seco de bootstrap o de la línea de excitación deja el conmutador en zona lineal",
  "15 V or bus voltage reaches the controller pin on the same net":
    "15 V o la tensión del bus llega a la patilla del controlador en el mismo nodo",
  "a shorted supply switch opens the fuse or fuse resistor before it":
    "un conmutador de la fuente en corto abre el fusible o la resistencia fusible que lo precede",
  "where no fuse resistor stands before it, the line fuse":
    "si no hay resistencia fusible delante, el fusible de línea",
  "drain voltage reaches the control side: opto, reference, supply clamp":
    "la tensión de drenador llega al lado de control: opto, referencia, limitador de la alimentación",
  "drain voltage reaches the control side: the low resistor that feeds it from its own winding burns":
    "la tensión de drenador llega al lado de control: se quema la resistencia baja que lo alimenta de su propio devanado",
  "the last gulp of a dying supply switch lifts its rails: their clamps short":
    "el último golpe de un conmutador de fuente que muere sube sus líneas: sus limitadores entran en corto",
  "an opto whose output took the drain passes on to the reference":
    "un opto cuya salida recibió el drenador lo pasa a la referencia",
  "without its clamp the supply switch is over-volted":
    "sin su limitador el conmutador de la fuente sufre sobretensión",
  "with the feedback open every rail rises: what hangs on it dies":
    "con la realimentación abierta suben todas las líneas: muere lo que cuelga de ellas",
  "a regulator shorted through over-volts what it feeds":
    "un regulador en corto de lado a lado da sobretensión a lo que alimenta",
  "dirt from a gate to the bus or a supply turns the switch on":
    "la suciedad de una puerta al bus o a una alimentación enciende el conmutador",
  "dirt from a module input to another input or a rail drives its switch against its partner":
    "la suciedad de una entrada del módulo a otra entrada o a una línea enfrenta su conmutador a su pareja",
  "dirt that brings a higher rail to a controller pin kills the pin":
    "la suciedad que lleva una línea más alta a una patilla del controlador mata la patilla",
  "with less resonant or bus capacitance the switch sees more volts than it stands":
    "con menos capacidad resonante o de bus el conmutador recibe más voltios de los que soporta",
  "a shorted coil or resonant capacitor puts the bus across the switch at its first pulse":
    "una bobina o un condensador resonante en corto pone el bus sobre el conmutador en su primer pulso",
  "a drifted or open chain from the coil turns the switch on at the wrong moment":
    "una cadena desviada o abierta desde la bobina enciende el conmutador a destiempo",
  "a dry capacitor lets the drive rail sag: the switch runs linear":
    "un condensador seco deja caer la línea de excitación: el conmutador trabaja en zona lineal",
  "no limiter stands before it: the shorted switch takes bridge junctions":
    "no hay limitador delante: el conmutador en corto se lleva uniones del puente",
  "{0} readings": { en: "1 reading", one: "{0} lectura", many: "{0} lecturas", other: "{0} lecturas" },
};
