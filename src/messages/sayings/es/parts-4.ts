import type { Sayings } from "../../said.ts";

export const PARTS_4: Sayings = {
  "each 0.3 to 0.7 V": "cada uno 0.3 a 0.7 V",
  "the three of one module agree within 20 mV, most often at 0.36 to 0.46 V":
    "los tres de un módulo coinciden dentro de 20 mV, casi siempre entre 0.36 y 0.46 V",
  "9 to 15 V from gate to the lower pin for a moment, through 1 kohm":
    "9 a 15 V de la puerta a la patilla inferior un instante, a través de 1 kohm",
  "now it conducts: a few tenths of a volt": "ahora conduce: unas décimas de voltio",
  "wait ten seconds, gate open": "esperar diez segundos, puerta al aire",
  "it still conducts: the gate holds and does not leak":
    "sigue conduciendo: la puerta retiene y no tiene fuga",
  "short the gate to the lower pin": "cortocircuitar la puerta con la patilla inferior",
  "off again: OL": "cortado otra vez: OL",
  "threshold: gate joined to the upper pin, a bench supply through 10 kohm":
    "umbral: puerta unida a la patilla superior, una fuente de banco a través de 10 kohm",
  "3 to 7 V for an IGBT, 2 to 5 V for a MOSFET": "3 a 7 V en un IGBT, 2 a 5 V en un MOSFET",
  "capacitance gate to lower pin, beside a genuine one":
    "capacidad de puerta a patilla inferior, junto a uno auténtico",
  "alike within a fifth; far less is a small die":
    "iguales dentro de una quinta parte; mucho menos es un chip pequeño",
  "marking and legs": "marcado y patas",
  "laser print of the maker's kind, no second coat of black, legs straight and bright":
    "grabado láser como el del fabricante, sin segunda capa de negro, patas rectas y brillantes",
  "short gate to emitter first, then diode mode, red on C, black on E":
    "cortocircuitar antes puerta y emisor, luego modo diodo, rojo en C, negro en E",
  "diode mode, red on E, black on C": "modo diodo, rojo en E, negro en C",
  "0.35 to 0.55 V with a diode inside, OL without": "0.35 a 0.55 V con diodo dentro, OL sin él",
  "diode mode, gate to emitter and gate to collector, both ways":
    "modo diodo, puerta a emisor y puerta a colector, en ambos sentidos",
  "OL all four": "OL las cuatro",
  "short gate to source first, then diode mode, red on D, black on S":
    "cortocircuitar antes puerta y fuente, luego modo diodo, rojo en D, negro en S",
  "diode mode, red on S, black on D": "modo diodo, rojo en S, negro en D",
  "0.4 to 0.7 V": "0.4 a 0.7 V",
  "diode mode, gate to source and gate to drain, both ways":
    "modo diodo, puerta a fuente y puerta a drenador, en ambos sentidos",
  "diode mode, red on U, V, W, black on P": "modo diodo, rojo en U, V, W, negro en P",
  "diode mode, red on each N, black on U, V, W": "modo diodo, rojo en cada N, negro en U, V, W",
  "compare the three of each row": "comparar los tres de cada fila",
  "the same six with the leads swapped": "los mismos seis con las puntas cambiadas",
  "OL all six": "OL los seis",
  "V15 to COM and each VB to its VS, both ways": "V15 a COM y cada VB a su VS, en ambos sentidos",
  "no short; three alike": "sin cortocircuito; los tres iguales",
  "each input to COM, both ways": "cada entrada a COM, en ambos sentidos",
  "six alike, about 5 kohm or one diode drop": "las seis iguales, unos 5 kohm o una caída de diodo",
  "fault and trip pins to COM": "patillas de fallo y disparo a COM",
  "no short": "sin cortocircuito",
  "leads joined, to the base plate, insulation tester or the highest ohms":
    "patas unidas, a la placa base, medidor de aislamiento o los ohmios más altos",
  "over 20 Mohm": "más de 20 Mohm",
  "pins and base": "patillas y base",
  "no cracked base, no pulled pin, old paste off":
    "base sin grietas, ninguna patilla arrancada, pasta vieja retirada",
  "diode mode, red on A, black on K, silicon": "modo diodo, rojo en A, negro en K, silicio",
  "0.40 to 0.80 V; a large fast one reads at the low end":
    "0.40 a 0.80 V; uno grande y rápido lee en el extremo bajo",
  "the same, Schottky": "lo mismo, Schottky",
  "0.1 to 0.45 V": "0.1 a 0.45 V",
  "the same, silicon carbide": "lo mismo, carburo de silicio",
  "0.75 to 0.85 V": "0.75 a 0.85 V",
  "leads swapped": "puntas cambiadas",
  "OL; a Schottky may show over 1 V": "OL; un Schottky puede marcar más de 1 V",
  "diode mode, each AC pin to plus, minus to each AC pin":
    "modo diodo, cada patilla AC a positivo, negativo a cada patilla AC",
  "each 0.2 to 0.8 V": "cada uno 0.2 a 0.8 V",
  "compare the four": "comparar los cuatro",
  "alike within 20 mV, most often at 0.42 to 0.55 V":
    "iguales dentro de 20 mV, casi siempre entre 0.42 y 0.55 V",
  "the same four with the leads swapped, and AC to AC both ways":
    "los mismos cuatro con las puntas cambiadas, y AC a AC en ambos sentidos",
  "all legs joined, to the case face, highest ohms":
    "todas las patas unidas, a la cara de la cápsula, ohmios más altos",
  "diode mode, red on A, black on K": "modo diodo, rojo en A, negro en K",
  "0.60 to 0.80 V": "0.60 a 0.80 V",
  "a bench supply above its volts through 10 kohm, K to plus":
    "una fuente de banco por encima de su tensión a través de 10 kohm, K al positivo",
  "its volts, within the marking": "su tensión, dentro de lo marcado",
  "diode mode, base to emitter and base to collector": "modo diodo, base a emisor y base a colector",
  "NPN: red on B, PNP: black on B; 0.55 to 0.75 V, the emitter's a little more":
    "NPN: rojo en B, PNP: negro en B; 0.55 a 0.75 V, la del emisor un poco más",
  "collector to emitter, both ways": "colector a emisor, en ambos sentidos",
  "0.40 to 0.60 V": "0.40 a 0.60 V",
  "supply and feedback pins to S, both ways":
    "patillas de alimentación y realimentación a S, en ambos sentidos",
  "diode mode on the input, both ways": "modo diodo en la entrada, en ambos sentidos",
  "0.95 to 1.20 V, OL the other way": "0.95 a 1.20 V, OL en el otro sentido",
  "output, both ways, input dark": "salida, en ambos sentidos, entrada a oscuras",
  "5 mA through the input, ohms across the output": "5 mA por la entrada, ohmios en la salida",
  "falls to a few hundred ohms": "baja a unos cientos de ohmios",
  "IN to OUT, OUT to GND, IN to GND, both ways": "IN a OUT, OUT a GND, IN a GND, en ambos sentidos",
  "a bench supply a few volts above its output, limit 50 mA":
    "una fuente de banco unos voltios por encima de su salida, límite 50 mA",
  "its volts within 4 %": "su tensión dentro del 4 %",
  "REF joined to K, a bench supply through 1 kohm": "REF unido a K, una fuente de banco a través de 1 kohm",
  "its volts within 2 %": "su tensión dentro del 2 %",
  "within its tolerance; an electrolytic no less than 80 %":
    "dentro de su tolerancia; un electrolítico no menos del 80 %",
  "class, volts and degrees on the body": "clase, voltios y grados en el cuerpo",
  "as wanted, not only the colour": "como se pide, no solo el color",
  "ESR, beside a new one of its kind": "ESR, junto a uno nuevo de su clase",
  "no more than twice as much": "no más del doble",
  "seal, top and feet": "sello, tapa y base",
  "no dome, no stain, no soft seal": "sin abombado, sin mancha, sello no blando",
  "an electrolytic that lay over a year: its volts from a limited supply through 22 kohm 10 W, clipped on before power":
    "un electrolítico guardado más de un año: su tensión desde una fuente limitada a través de 22 kohm 10 W, con pinzas puestas antes de dar tensión",
  "the current falls to its leakage within the hour: reformed; then discharge it and prove it below 10 V":
    "la corriente baja a la de fuga en menos de una hora: reformado; después descargarlo y comprobar que está por debajo de 10 V",
  "highest ohms, both ways": "ohmios más altos, en ambos sentidos",
  "over 10 Mohm": "más de 10 Mohm",
  "the coating": "el recubrimiento",
  "no crack, no soot": "sin grieta, sin hollín",
  "ohms, cold": "ohmios, en frío",
  "the marking within 20 %; it falls in the hand": "lo marcado dentro del 20 %; baja en la mano",
  "the marking within 20 %; it rises under hot air": "lo marcado dentro del 20 %; sube con aire caliente",
  "the discs": "los discos",
  "no crack": "sin grieta",
  "below 0.1 ohm": "menos de 0.1 ohm",
  "amps, volts, F or T, breaking capacity on the cap":
    "amperios, voltios, F o T, poder de corte en el casquillo",
  "as wanted": "como se pide",
  "ohms, out of circuit": "ohmios, fuera de circuito",
  "the marking within its tolerance; a shunt by four wires":
    "lo marcado dentro de su tolerancia; un shunt a cuatro hilos",
  "coil ohms": "ohmios de la bobina",
  "the data sheet's within 10 %": "lo de la hoja de datos dentro del 10 %",
  "contact, coil dark and coil fed": "contacto, bobina sin y con alimentación",
  "OL, then below 0.1 ohm": "OL, luego menos de 0.1 ohm",
  "the contacts, where they can be seen": "los contactos, donde se vean",
  "no bead, no soot": "sin gota fundida, sin hollín",
  "supply pins to ground, both ways": "patillas de alimentación a masa, en ambos sentidos",
  "a junction one way, no short": "una unión en un sentido, sin cortocircuito",
  "a few pins to ground": "unas patillas a masa",
  "alike, one diode drop": "iguales, una caída de diodo",
  "board number and firmware label of the donor": "número de placa y etiqueta de firmware de la donante",
  "the very same": "exactamente los mismos",
  "supply to ground, both ways": "alimentación a masa, en ambos sentidos",
  "no short, a junction one way": "sin cortocircuito, una unión en un sentido",
  "like pins among each other": "patillas iguales entre sí",
  "leads joined, to the tab, insulation tester or the highest ohms":
    "patas unidas, a la aleta, medidor de aislamiento o los ohmios más altos",
  "tab to the middle pin": "aleta a la patilla central",
  "below 1 ohm: live, so pad and bush are needed; OL: isolated":
    "menos de 1 ohm: con tensión, así que hacen falta lámina y casquillo; OL: aislada",
  "Write these down: the cold re-check after soldering and after the last screw is compared with them.":
    "Anotar estas lecturas: con ellas se compara la comprobación en frío tras soldar y tras el último tornillo.",
  "clean both faces until no old paste is left; a pad that was squeezed once is replaced":
    "limpiar ambas caras hasta que no quede pasta vieja; una lámina ya aplastada se sustituye",
  "a thin even film of paste, no more than fills the grooves; a dry pad takes none":
    "una capa fina y uniforme de pasta, la justa para llenar las rayas; una lámina seca no lleva",
  "put the part on its heatsink with spacer, bush and pad, leads through the board, not soldered":
    "poner la pieza en su disipador con separador, casquillo y lámina, patas a través de la placa, sin soldar",
  "snug all screws by hand, crosswise": "apretar todos los tornillos a mano, en cruz",
  "full torque, crosswise": "par completo, en cruz",
  "solder now, so that no lead carries the pull of a screw":
    "soldar ahora, para que ninguna pata aguante el tirón de un tornillo",
  "over 20 Mohm from each lead to the heatsink; read the junctions again, since a clamp can short a part that read well loose":
    "más de 20 Mohm de cada pata al disipador; leer de nuevo las uniones, pues una brida puede cortocircuitar una pieza que suelta leía bien",
  "taken off again: clean, new paste, from the start":
    "si se vuelve a quitar: limpiar, pasta nueva, desde el principio",
  "{0} to {1} N m, M3": "{0} a {1} N m, M3",
  "lead ends at most {0} out of the solder, and {1} of air from them to the heatsink; over a rebuilt area {2} along the surface, {3} where it is damp or dirty, and twice all of it towards what a hand may touch (bus of {4}; IEC 60664-1, seen at second hand)":
    "puntas de las patas a lo sumo {0} fuera de la soldadura, y {1} de aire de ellas al disipador; sobre una zona reconstruida {2} por la superficie, {3} donde haya humedad o suciedad, y el doble de todo hacia lo que una mano pueda tocar (bus de {4}; IEC 60664-1, visto de segunda mano)",
};
