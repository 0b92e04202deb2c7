import type { Sayings } from "../../said.ts";

export const PLANNING: Sayings = {
  "lowest at none of them in particular": "lo más bajo en ninguno de ellos en particular",
  "lowest at {0}": "lo más bajo en {0}",
  "next to no amps, nothing warm": "casi sin corriente, nada caliente",
  "none of the parts warm": "ninguna de las piezas caliente",
  "{0} warmest": "{0}: la más caliente",
  "{0}, none of the parts warm": "{0}, ninguna de las piezas caliente",
  "{0}, {1} warmest": "{0}, {1}: la más caliente",
  beep: "pita",
  silent: "no pita",
  zero: "casi cero",
  junction: "una unión",
  high: "alto",
  "no answer": "sin respuesta",
  "It runs. Before it is handed back: {0} is left that something weak is still in it, and a board that comes back costs more than this look.":
    "Funciona. Antes de devolverla: queda {0} de que aún haya algo débil en ella, y una placa que vuelve cuesta más que esta mirada.",
  "high at every part": "alto en todas las piezas",
  "Milliohms along the {0} rail fall towards its short: take them at the pins of each part, the lowest is the short.":
    "Los miliohmios a lo largo de la línea {0} bajan hacia su corto: mídalos en las patillas de cada pieza; la más baja es el corto.",
  "no price is agreed yet: counted with the shop's usual {0}":
    "aún no hay precio acordado: se cuenta con el habitual del taller, {0}",
  "{0} is dead and cannot be bought: everything fitted before is wasted":
    "{0} está muerto y no se puede comprar: todo lo montado antes se pierde",
  "{0} is good and something else is the fault": "{0} está bien y el fallo es otro",
  "there is {0} too, which would take the new {1} with it":
    "además hay {0}, que se llevaría por delante el nuevo {1}",
  "{0} is faulty too and would take the new {1} with it":
    "{0} también falla y se llevaría por delante el nuevo {1}",
  "Contact {0} of {1} goes back on before anything is powered.":
    "El contacto {0} de {1} vuelve a su sitio antes de dar tensión a nada.",
  "Pin {0} of {1} goes back on its pad before anything is powered.":
    "La patilla {0} de {1} vuelve a su pista antes de dar tensión a nada.",
  "{0} reads good and goes back before anything is powered.":
    "{0} da buena lectura y vuelve a su sitio antes de dar tensión a nada.",
  "{0} is off the board and not to be trusted: a new one goes in.":
    "{0} está fuera de la placa y no es de fiar: se pone uno nuevo.",
  "The joints of {0} are new: read it again before it is replaced after all.":
    "Las soldaduras de {0} son nuevas: léalo otra vez antes de sustituirlo de todos modos.",
  "lower than before it went in and than the board explains: something lies across it, or it took harm":
    "más bajo que antes de montarlo y de lo que explica la placa: hay algo en paralelo, o se dañó",
  "higher than before it went in, which nothing across it can do: a joint is poor, or it is another part":
    "más alto que antes de montarlo, y nada en paralelo puede hacer eso: una soldadura es mala, o es otra pieza",
  "a short where there was none before it went in: a bridge of solder, or it died in fitting":
    "un corto donde no lo había antes de montarlo: un puente de estaño, o murió al montarlo",
  "{0} reads {1}. Take this one again before power, on clean metal.":
    "{0} lee {1}. Repita esta lectura antes de dar tensión, sobre metal limpio.",
  "ON THE BOARD": "EN LA PLACA",
  "ON THE PART IN YOUR HAND": "EN LA PIEZA QUE TIENE EN LA MANO",
  "For a ceramic speak an edge, a screw or a connector close by, and ohms that jump under light pressure; for a chip, other pins of it that read low too.":
    "A favor de un cerámico hablan un borde, un tornillo o un conector cercano, y unos ohmios que saltan con una presión ligera; a favor de un chip, otras patillas suyas que también leen bajo.",
  "A ceramic is hot at one end, a chip in the middle of its package.":
    "Un cerámico está caliente en un extremo; un chip, en el centro de su encapsulado.",
  anything: "cualquier cosa",
  "anything else": "cualquier otra cosa",
  "It ran after the repair, under load as well, and nothing has been changed since. Write it up and hand it back. What is left unproven: {0} that something weak is still in it.":
    "Funcionó tras la reparación, también con carga, y desde entonces no se ha cambiado nada. Anótelo y devuélvala. Lo que queda sin comprobar: {0} de que aún haya algo débil en ella.",
  "It ran after the repair and nothing has been changed since. Load it until it is warm through (20 to 30 minutes), then write it up and hand it back. What is left unproven: {0} that something weak is still in it.":
    "Funcionó tras la reparación y desde entonces no se ha cambiado nada. Cárguela hasta que esté caliente del todo (de 20 a 30 minutos), después anótelo y devuélvala. Lo que queda sin comprobar: {0} de que aún haya algo débil en ella.",
  "It ran as it came, under load as well, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: {0} that something weak is still in it.":
    "Funcionó tal como llegó, también con carga, sin sustituir nada: no se encontró fallo en esta placa; mire a qué está conectada. Lo que queda sin comprobar: {0} de que aún haya algo débil en ella.",
  "It ran as it came, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: {0} that something weak is still in it.":
    "Funcionó tal como llegó, sin sustituir nada: no se encontró fallo en esta placa; mire a qué está conectada. Lo que queda sin comprobar: {0} de que aún haya algo débil en ella.",
  "across {0}, because what was fitted or soldered may be bad, in wrong, or bridged":
    "en los extremos de {0}, porque lo montado o soldado puede estar mal, al revés o puenteado",
  "held against what was read before it went in": "comparado con lo leído antes de montarlo",
  "the bus both ways, because {0} hangs on it": "el bus en ambos sentidos, porque de él cuelga {0}",
  "the {0} rail both ways, because {1} hangs on it":
    "la línea {0} en ambos sentidos, porque de ella cuelga {1}",
  "Cold re-check before power: {0}. A second short behind the first is common.":
    "Nueva comprobación en frío antes de dar tensión: {0}. Un segundo corto tras el primero es frecuente.",
  "Screwed down: each lead of {0} to the heatsink in the highest ohms range, OL; less is a missing pad, a burr or a bridge of paste.":
    "Ya atornillado: cada terminal de {0} contra el disipador en el rango más alto de ohmios, OL; menos significa que falta la almohadilla, una rebaba o un puente de pasta.",
  "{0} is new and reads as if it were bad ({1}). Measure it by itself before another is fitted: either it came bad, or the board is not as drawn.":
    "{0} es nuevo y lee como si estuviera mal ({1}). Mídalo solo antes de montar otro: o vino mal, o la placa no es como está dibujada.",
  "There may be {0} ({1}): clean and dry the place before anything else there is judged.":
    "Puede haber {0} ({1}): limpie y seque el lugar antes de juzgar otra cosa allí.",
  "The readings say that {0} is open ({1}). A cracked joint reads the same, and solder costs no part: make its joints anew, then read it again.":
    "Las lecturas dicen que {0} está abierto ({1}). Una soldadura agrietada lee lo mismo, y el estaño no cuesta una pieza: rehaga sus soldaduras y léalo otra vez.",
  "{0} ({1}) would condemn the board, since it cannot be bought: it is measured by itself before the board is written off.":
    "{0} ({1}) condenaría la placa, pues no se puede comprar: se mide solo antes de darla por perdida.",
  "No fault that the program knows explains these readings, taken again where they could be: the board may not be as drawn. It stops here; who goes on, goes by hand.":
    "Ningún fallo que el programa conozca explica estas lecturas, repetidas donde se pudo: quizá la placa no sea como está dibujada. Aquí se detiene; quien siga, sigue por su cuenta.",
  "No fault that the program knows explains these readings together. Take this one again, with both probes on clean metal, before anything is concluded.":
    "Ningún fallo que el programa conozca explica estas lecturas juntas. Repita esta, con ambas puntas sobre metal limpio, antes de concluir nada.",
  "The best repair from here: {0}, {1} that it is enough.":
    "La mejor reparación desde aquí: {0}, {1} de que baste.",
  "tells little": "dice poco",
  "{0}, rather than {1}": "{0}, más que {1}",
  "as on a good board": "como en una placa buena",
  "clears {0}": "descarta {0}",
  "less likely: {0}": "menos probable: {0}",
  "{0} ({1})": "{0} ({1})",
  "{0} ({1} each)": "{0} ({1} cada uno)",
  "{0} or {1}": "{0} o {1}",
  "under 1 %": "menos del 1 %",
  "over 99 %": "más del 99 %",
  "burnt, cracked, bulged or corroded": "quemado, agrietado, hinchado o corroído",
  "{0} by itself reads faulty": "{0} solo lee defectuoso",
  "{0} by itself reads good": "{0} solo lee bueno",
  "Off the board the meter sees {0} alone.": "Fuera de la placa el medidor ve solo {0}.",
  "With pin {0} of {1} free the meter sees {2} alone.":
    "Con la patilla {0} de {1} libre, el medidor ve solo {2}.",
  "none of them gets warm": "ninguno se calienta",
  "Feed the {0} rail with {1}, limit {2}: healthy silicon stays off, all current flows in the short.":
    "Alimente la línea {0} con {1}, límite {2}: el silicio sano no conduce, toda la corriente va por el corto.",
  "Feed the {0} rail with a {1} rechargeable cell through {2}.":
    "Alimente la línea {0} con una pila recargable de {1} a través de {2}.",
  "Of the parts across the rail the warmest is the short; what feeds it in series runs hotter and does not count. Below 0.05 ohm it stays cold.":
    "De las piezas en la línea, la más caliente es el corto; lo que lo alimenta en serie se calienta más y no cuenta. Por debajo de 0.05 ohm se queda frío.",
  "Clip it on with the output off, plus on its 0 V ({0}) and minus on {1}, for the rail is negative, then hands off.":
    "Píncelo con la salida apagada, el positivo en su 0 V ({0}) y el negativo en {1}, pues la línea es negativa; después, manos fuera.",
  "Clip it on with the output off, plus on {0}, then hands off.":
    "Píncelo con la salida apagada, el positivo en {0}; después, manos fuera.",
  "{0}, limit {1}": "{0}, límite {1}",
  "{0} cell through {1}": "pila de {0} a través de {1}",
  "which part of the rail takes the current": "qué pieza de la línea se lleva la corriente",
  "one part is clearly warmer than the rest": "una pieza está claramente más caliente que las demás",
  "the current rises, or anything smells": "la corriente sube o algo huele",
  "{0} is below every junction: nothing that is whole is harmed.":
    "{0} está por debajo de toda unión: nada que esté sano se daña.",
  "{0} is below the rail's own volts: nothing that is whole is harmed.":
    "{0} está por debajo de la tensión propia de la línea: nada que esté sano se daña.",
  "Current limit first, then the clips, then the output.":
    "Primero el límite de corriente, después las pinzas, después la salida.",
  "The resistor in series first, then the clips, the cell last.":
    "Primero la resistencia en serie, después las pinzas, la pila al final.",
  "At {0} nothing stands out: turn it up to {1}, limit {2}, the clips as they are, hands off.":
    "A {0} nada destaca: súbalo a {1}, límite {2}, las pinzas como están, manos fuera.",
  "At {0} nothing stands out, nor would a short of these ohms: turn it up to {1}, limit {2}, the clips as they are, hands off.":
    "A {0} nada destaca, ni destacaría un corto de estos ohmios: súbalo a {1}, límite {2}, las pinzas como están, manos fuera.",
  "The {0} rail is fed: after a minute one picture from the camera tells which part across it is warmest.":
    "La línea {0} está alimentada: tras un minuto, una imagen de la cámara dice qué pieza conectada a ella está más caliente.",
  "The {0} rail is fed: after a minute the spot thermometer from a hand's breadth away tells which part across it is warmest.":
    "La línea {0} está alimentada: tras un minuto, el termómetro puntual a un palmo de distancia dice qué pieza conectada a ella está más caliente.",
  "Hands off the board.": "Manos fuera de la placa.",
  "{0} still reads low": "{0} sigue leyendo bajo",
  "{0} reads high": "{0} lee alto",
  "With one end of {0} up the {1} rail is in two halves; ohms from {2} to {3} tell in which the short is.":
    "Con un extremo de {0} levantado, la línea {1} queda en dos mitades; los ohmios de {2} a {3} dicen en cuál está el corto.",
  "Milliohm meter, four wires, on each part's own two pins.":
    "Miliohmímetro, cuatro hilos, en las dos patillas propias de cada pieza.",
  "Bench supply at {0}, limit {1}: clip it and the meter (millivolts) to the part's own two pins with the output off, switch the output on, read volts over amps, switch it off before the clips move.":
    "Fuente de banco a {0}, límite {1}: pínzela junto con el medidor (milivoltios) a las dos patillas propias de la pieza con la salida apagada, encienda la salida, lea voltios entre amperios, apáguela antes de mover las pinzas.",
  "A {0} rechargeable cell through {1}: clip it and the meter (millivolts) to the part's own two pins, close it, read; the amps are the volts across the resistor. Open it before the clips move.":
    "Una pila recargable de {0} a través de {1}: pínzela junto con el medidor (milivoltios) a las dos patillas propias de la pieza, cierre el circuito, lea; los amperios son los voltios en la resistencia. Ábralo antes de mover las pinzas.",
  "The same reading once more: what it showed fits badly with the rest, and probes slip.":
    "La misma lectura una vez más: lo que dio casa mal con el resto, y las puntas resbalan.",
  "The same reading once more: much hangs on it, and a probe slips now and then.":
    "La misma lectura una vez más: mucho depende de ella, y una punta resbala de vez en cuando.",
  "Read before {0} was replaced; once more now.": "Leído antes de sustituir {0}; ahora otra vez.",
  "Read before {0} was put back; once more now.": "Leído antes de volver a poner {0}; ahora otra vez.",
  "Read before {0} was resoldered; once more now.": "Leído antes de resoldar {0}; ahora otra vez.",
  "Read before the board area was resoldered; once more now.":
    "Leído antes de resoldar la placa; ahora otra vez.",
  "Read before the {0} area was resoldered; once more now.":
    "Leído antes de resoldar la zona {0}; ahora otra vez.",
  "Read before {0} was cleaned; once more now.": "Leído antes de limpiar {0}; ahora otra vez.",
  "Read before the board area was cleaned; once more now.":
    "Leído antes de limpiar la placa; ahora otra vez.",
  "Read before the {0} area was cleaned; once more now.":
    "Leído antes de limpiar la zona {0}; ahora otra vez.",
  "Read before {0} pin {1} was soldered back; once more now.":
    "Leído antes de volver a soldar la patilla {1} de {0}; ahora otra vez.",
  "Read before the board was powered; once more now.":
    "Leído antes de dar tensión a la placa; ahora otra vez.",
  "the repeats read one way": "las repeticiones leen de una manera",
  "the repeats read another way": "las repeticiones leen de otra manera",
  "the repeats read a third way": "las repeticiones leen de una tercera manera",
  "the repeats read way {0}": "las repeticiones leen de la manera {0}",
  "With the plug of {0} pulled, what hangs together through it stands apart. Then again, red to black: {1}.":
    "Con el conector de {0} quitado, lo que se une a través de él queda separado. Después, otra vez, rojo a negro: {1}.",
  "Nothing more is to be seen: output off, clips off.": "No hay más que ver: salida apagada, pinzas fuera.",
  "Write down the amps on the supply's own display once they stand still. No meter goes across the rail for it: in its amps range it is a short. Nothing on the board is touched; then switch off.":
    "Anote los amperios de la pantalla de la propia fuente cuando se queden quietos. Para eso no se pone ningún medidor en la línea: en su rango de amperios es un corto. No se toca nada de la placa; después, apague.",
  "The current rises or something grows hot: switch off at once.":
    "La corriente sube o algo se calienta: apague enseguida.",
  "The red probe stays where it is: take the whole row.":
    "La punta roja se queda donde está: tome toda la fila.",
  "The black probe stays where it is: take the whole row.":
    "La punta negra se queda donde está: tome toda la fila.",
  "The meter is set already: take the whole row.": "El medidor ya está puesto: tome toda la fila.",
  "A look at {0} costs next to nothing, and nobody has taken it yet.":
    "Mirar {0} no cuesta casi nada, y nadie lo ha hecho aún.",
  "Damage on {0} would speak for {1}; a clean body clears nothing for certain.":
    "Un daño en {0} apuntaría a {1}; un cuerpo limpio no descarta nada con certeza.",
  "Cheap, and nothing has tested it yet.": "Es barato, y nada lo ha probado aún.",
  "Shows whether {0}.": "Muestra si {0}.",
  "Shows which of these it is, if any: {0}.": "Muestra cuál de estos es, si es alguno: {0}.",
  "{0} cannot be bought: a reading that accuses it ({1}) may end the job, so this comes before more money is spent.":
    "{0} no se puede comprar: una lectura que lo acuse ({1}) puede acabar el trabajo, así que esto va antes de gastar más dinero.",
  "{0} cannot be bought: a reading that accuses it ({1}) may end the job, so this comes before any money is spent.":
    "{0} no se puede comprar: una lectura que lo acuse ({1}) puede acabar el trabajo, así que esto va antes de gastar nada.",
  "{0} ({1}, likeliest {2})": "{0} ({1}, lo más probable: {2})",
  "{0}: no check left is worth its minutes before that.":
    "{0}: no queda ninguna comprobación que valga sus minutos antes de eso.",
  "Due with it before the next power-up: {0}.": "Toca con ello antes de volver a dar tensión: {0}.",
  "{0} last: fitted before what blew it, a fuse blows again.":
    "{0} al final: montado antes que lo que lo fundió, un fusible vuelve a fundirse.",
  "After that, {0} that the board is whole.": "Después de eso, {0} de que la placa esté sana.",
  "{0} is dead ({1}) and nobody sells it. Anything fitted now is money lost.":
    "{0} está muerto ({1}) y nadie lo vende. Todo lo que se monte ahora es dinero perdido.",
  "By the readings this board is more likely whole ({0}) than not, yet it has not been seen to run, and nothing left on this bench tells why. Before it is given back: what tells it to run may be missing (a command, a door or float switch, a sensor, the fan's signal). Try it in its own unit.":
    "Según las lecturas, esta placa está más probablemente sana ({0}) que no, pero no se la ha visto funcionar, y nada de lo que queda en este banco dice por qué. Antes de devolverla: puede faltar lo que le manda funcionar (una orden, un interruptor de puerta o de flotador, un sensor, la señal del ventilador). Pruébela en su propio equipo.",
  "What is left to find and to replace would cost more in minutes and parts than the repair earns.":
    "Lo que queda por encontrar y sustituir costaría más en minutos y piezas de lo que gana la reparación.",
  "The likeliest repair from here is {0}: {1} of parts, {2}, and {3} that it is enough. Weighed with what a failed try costs, that is worth less than stopping, at {4} for the repair.":
    "La reparación más probable desde aquí es {0}: {1} en piezas, {2}, y {3} de que baste. Contando lo que cuesta un intento fallido, eso vale menos que parar, a {4} por la reparación.",
  "{0} has to be ordered.": "{0} hay que pedirlo.",
  "For {0} one lies at hand.": "Para {0} hay uno a mano.",
  "For {0} {1} lies at hand.": "Para {0} hay {1} a mano.",
  "For {0} one lies at hand, pulled: read it in the hand before it goes in.":
    "Para {0} hay uno a mano, de desguace: medirlo en la mano antes de montarlo.",
  "For {0} {1} lies at hand, pulled: read it in the hand before it goes in.":
    "Para {0} hay {1} a mano, de desguace: medirlo en la mano antes de montarlo.",
  "There are {0}: {1} needs another.": {
    en: "There is one: {1} needs another.",
    one: "Hay {0}: {1} necesita otro.",
    many: "Hay {0}: {1} necesita otro.",
    other: "Hay {0}: {1} necesita otro.",
  },
  "There are {0}: {1} need others.": {
    en: "There is one: {1} need others.",
    one: "Hay {0}: {1} necesitan otros.",
    many: "Hay {0}: {1} necesitan otros.",
    other: "Hay {0}: {1} necesitan otros.",
  },
  "There are {0}; for {1} {2} lies at hand.": {
    en: "There is one; for {1} {2} lies at hand.",
    one: "Hay {0}; para {1} hay {2} a mano.",
    many: "Hay {0}; para {1} hay {2} a mano.",
    other: "Hay {0}; para {1} hay {2} a mano.",
  },
};
