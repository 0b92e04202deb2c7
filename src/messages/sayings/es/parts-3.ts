import type { Sayings } from "../../said.ts";

export const PARTS_3: Sayings = {
  "What answers at {0} is no SCPI instrument.": "Lo que responde en {0} no es un instrumento SCPI.",
  "{0} answers no figures; connecting again.": "{0} no responde con cifras; conectando de nuevo.",
  "The meter's last answer was no figure; asking again.":
    "La última respuesta del medidor no era una cifra; se pregunta de nuevo.",
  "{0} does not answer for its errors.": "{0} no responde por sus errores.",
  "The meter has no {0} (it says: {1} {2}). Type this one.":
    "El medidor no tiene {0} (dice: {1} {2}). Escribir esta lectura a mano.",
  "a function that it does not name": "una función que no nombra",
  "{0} sends no lines: is it a SCPI instrument?": "{0} no envía líneas: ¿es un instrumento SCPI?",
  "No meter at {0} ({1}): is it on, is the address right?":
    "No hay medidor en {0} ({1}): ¿está encendido, es correcta la dirección?",
  "The wire to {0} was cut.": "Se cortó el cable a {0}.",
  "Nothing answers at {0}.": "Nada responde en {0}.",
  "The meter did not answer {0} within {1} s; connecting again.":
    "El medidor no respondió a {0} en {1} s; conectando de nuevo.",
  "{0} is not installed: on Debian, apt-get install sigrok-cli":
    "{0} no está instalado: en Debian, apt-get install sigrok-cli",
  "{0} ended ({1})": "{0} terminó ({1})",
  "{0}. Is the meter on, its wire plugged in, and its sending switched on?":
    "{0}. ¿Está encendido el medidor, conectado su cable y activado el envío?",
  "{0} lists no drivers": "{0} no enumera ningún driver",
  "{0}. Turn it off on the meter.": "{0}. Desactivarlo en el medidor.",
  "A negative figure here means that charge is left: discharge, wait, and measure again.":
    "Una cifra negativa aquí significa que queda carga: descargar, esperar y medir de nuevo.",
  "Not at rest yet.": "Aún no está en reposo.",
  "Still climbing: this is the figure two seconds after touching.":
    "Aún subiendo: esta es la cifra dos segundos después de tocar.",
  "Free leads read this too: see that both probes make contact.":
    "Las puntas al aire también marcan esto: comprobar que ambas hacen contacto.",
  "The meter is set to {0}. Turn it to {1}: nothing is taken from it until then.":
    "El medidor está en {0}. Ponerlo en {1}: hasta entonces no se toma nada de él.",
  "{0} is no address; write the meter's name or number, as 192.168.1.20 or bench-meter:5025":
    "{0} no es una dirección; escribir el nombre o número del medidor, como 192.168.1.20 o bench-meter:5025",
  "{0} is no driver; write one of the list, where needed with its wire, as scpi-dmm:conn=/dev/ttyUSB0":
    "{0} no es un driver; escribir uno de la lista, y donde haga falta su cable, como scpi-dmm:conn=/dev/ttyUSB0",
  "{0} is no channel; P1 is one": "{0} no es un canal; P1 lo es",
  "{0} is no meter; write scpi:HOST:PORT or sigrok:DRIVER":
    "{0} no es un medidor; escribir scpi:HOST:PORT o sigrok:DRIVER",
  'meter: kind must be "none", "scpi" or "sigrok"': 'meter: kind debe ser "none", "scpi" o "sigrok"',
  "what good ones read": "lo que leen las buenas",
  nothing: "nada",
  "{0} {1} -> {2}": "{0} {1} -> {2}",
  "new parts: {0}": "piezas nuevas: {0}",
  "parts that go: {0}": "piezas que se van: {0}",
  "of the board itself: {0}": "de la propia placa: {0}",
  "nothing: it is the same board": "nada: es la misma placa",
  deleted: "borrada",
  "expected {0}; a board file is brought as it is": "se esperaba {0}; un archivo de placa se trae tal cual",
  "a packed board": "una placa empaquetada",
  "a shop's word is made of letters, digits, _ + and -":
    "la palabra de un taller se forma con letras, cifras, _ + y -",
  "counts of jobs": "recuentos de trabajos",
  "counts of {0}": "recuentos de {0}",
  "expected a whole number": "se esperaba un número entero",
  pictures: "imágenes",
  "at most one picture a side": "como máximo una imagen por cara",
  "a picture": "una imagen",
  "expected 0, 90, 180 or 270 degrees": "se esperaban 0, 90, 180 o 270 grados",
  "expected a picture of at most 5 MB in base64": "se esperaba una imagen de 5 MB como máximo en base64",
  "a pinned place": "un lugar marcado",
  "this board has no such net or pin": "esta placa no tiene tal nodo ni patilla",
  "with {0} pictures of the board, {1} places pinned": {
    en: "with a picture of the board, {1} places pinned",
    one: "con una imagen de la placa, {1} lugares marcados",
    many: "con {0} imágenes de la placa, {1} lugares marcados",
    other: "con {0} imágenes de la placa, {1} lugares marcados",
  },
  'event "{0}" is in the log already with other content; give the new one an id of its own':
    'el evento "{0}" ya está en el registro con otro contenido; dar al nuevo un id propio',
  'another job has the id "{0}"; give the new one an id of its own':
    'otro trabajo tiene el id "{0}"; dar al nuevo un id propio',
  'another picture of this job has the id "{0}"': 'otra imagen de este trabajo tiene el id "{0}"',
  'another picture of a board has the id "{0}"': 'otra imagen de una placa tiene el id "{0}"',
  'another version of this board\'s pictures has the id "{0}"':
    'otra versión de las imágenes de esta placa tiene el id "{0}"',
  'another version of this board has the id "{0}"': 'otra versión de esta placa tiene el id "{0}"',
  "no JSON behind the name": "no hay JSON tras el nombre",
  "a command, not a part": "una orden, no una pieza",
  "{0} is no {1}: map or remove {2}": "{0} no es {1}: asignar {2} o quitarlo",
  "no number behind the two nets of {0}": "no hay número tras los dos nodos de {0}",
  "nobody says which pins {0} has: map it": "nadie dice qué patillas tiene {0}: asignarlas",
  "{0} has {1} pins, {2} {3} nets": "{0} tiene {1} patillas, {2} tiene {3} nodos",
  "no part of a board is written with {0}": "ninguna pieza de una placa se escribe con {0}",
  "no .model says what {0} is: map its model": "ningún .model dice qué es {0}: asignar su modelo",
  "no parts in it; export it as a KiCad netlist (.net)":
    "no contiene piezas; exportarlo como netlist de KiCad (.net)",
  "a sheet inside this one is not read: export the whole as a netlist and read that":
    "una hoja dentro de esta no se lee: exportar el conjunto como netlist y leer esa",
  "a bus is not followed: label the wires, or export a netlist and read that":
    "un bus no se sigue: etiquetar los hilos, o exportar una netlist y leer esa",
  "an entry to a bus is not followed: label the wires, or export a netlist and read that":
    "una entrada a un bus no se sigue: etiquetar los hilos, o exportar una netlist y leer esa",
  "no schematic; it begins with (kicad_sch where it is one":
    "no es un esquema; lo sería si empezara por (kicad_sch",
  "no parts in it": "no contiene piezas",
  "line {0}: brackets nest too deep": "línea {0}: demasiados paréntesis anidados",
  "line {0}: a bracket closes that was not opened": "línea {0}: se cierra un paréntesis que no se abrió",
  "line {0}: expected ( at the beginning": "línea {0}: se esperaba ( al principio",
  "nothing in it": "está vacío",
  "line {0}: this bracket is not closed": "línea {0}: este paréntesis no se cierra",
  "nothing says so: taken as NPN": "nada lo dice: se toma como NPN",
  "nothing says so: taken as N-channel": "nada lo dice: se toma como canal N",
  "is no reference (letters, digits, _ + - only): annotate the schematic":
    "no es una referencia (solo letras, cifras, _ + -): numerar el esquema",
  "stands twice": "aparece dos veces",
  "left out, as the mapping says": "omitido, como dice la asignación",
  "drawn as not fitted": "dibujado como no montado",
  "nobody says what a {0} is: map it": "nadie dice qué es un {0}: asignarlo",
  "its pin {0} on {1} is left out: map it": "su patilla {0} en {1} se omite: asignarla",
  "its pin {0} is a second {1}, on {2} and not on {3}: map its pins":
    "su patilla {0} es una segunda {1}, en {2} y no en {3}: asignar sus patillas",
  "its type {0} has no place in a board file": "su tipo {0} no tiene sitio en un archivo de placa",
  "its value {0} is not read: the kind's usual counts":
    "su valor {0} no se entiende: vale el habitual de su clase",
  "{0} of its value is not read": "{0} de su valor no se entiende",
  "{0} is no kind of part: map it": "{0} no es una clase de pieza: asignarla",
  "{0} has no pin {1}: map its pins": "{0} no tiene patilla {1}: asignar sus patillas",
  "its pin {0} is on no net": "su patilla {0} no está en ningún nodo",
  "{0} (left out: {1} lines, first line {2}: {3})": "{0} (omitidas: {1} líneas, la primera la {2}: {3})",
  "the file does not say what the board runs on: give the supply, such as ac,230,50,L,N":
    "el archivo no dice con qué se alimenta la placa: dar la alimentación, como ac,230,50,L,N",
  seen: "visto",
  "seen-2nd": "visto de segunda mano",
  "common practice": "práctica común",
  "from memory": "de memoria",
  "DC amps": "amperios CC",
  "AC amps": "amperios CA",
  "ohms by four wires": "ohmios a cuatro hilos",
  period: "período",
  "HOLD is on: the figure stands still whatever the probes touch":
    "HOLD está activado: la cifra no cambia, toquen lo que toquen las puntas",
  "REL is on: the figure is a difference": "REL está activado: la cifra es una diferencia",
  "MAX is on: the figure is the largest so far": "MAX está activado: la cifra es la mayor hasta ahora",
  "MIN is on: the figure is the smallest so far": "MIN está activado: la cifra es la menor hasta ahora",
  "AVG is on: the figure is a mean": "AVG está activado: la cifra es una media",
  "a figure without a unit": "una cifra sin unidad",
  "AC and DC volts together": "voltios CA y CC juntos",
};
