import type { Sayings } from "../../said.ts";

export const PLANNING_POWER: Sayings = {
  "below 10 V": "menos de 10 V",
  "empty: go on": "vacío: siga",
  "10 V or more": "10 V o más",
  "still charged: discharge it through a resistor, then measure again":
    "aún cargado: descárguelo a través de una resistencia y mida otra vez",
  "The resistor may have emptied {0} as well: read again at each one's own pins.":
    "La resistencia puede haber vaciado también {0}: lea otra vez en las patillas propias de cada uno.",
  "It has done its work there; {0} still holds {1} and is next.":
    "Allí ya hizo su trabajo; {0} aún guarda {1} y es el siguiente.",
  "The resistor needs about {0} to bring {1} below 10 V. Leave it on and read again at the pins of each.":
    "La resistencia necesita unos {0} para bajar {1} de 10 V. Déjela puesta y lea otra vez en las patillas de cada uno.",
  "The resistor needs about {0} to bring {1} below 10 V. Leave it on and read again at the pins of {2}.":
    "La resistencia necesita unos {0} para bajar {1} de 10 V. Déjela puesta y lea otra vez en las patillas de {2}.",
  "If it does not fall, something still feeds it: is the plug out, does a motor or fan turn, do the clips bite?":
    "Si no baja, algo lo sigue alimentando: ¿está fuera el enchufe, gira un motor o ventilador, muerden las pinzas?",
  "{0} reads over the meter's range ({1}).": "{0} supera el rango del medidor ({1}).",
  "{0} holds {1} ({2}).": "{0} guarda {1} ({2}).",
  "Then measure again.": "Después, mida otra vez.",
  "Clip {0}, {1}, across its own pins: about {2} to fall below 10 V.":
    "Pince {0}, {1}, entre sus propias patillas: unos {2} para bajar de 10 V.",
  "Clip {0}, {1}, across its own pins: about {2} to fall below 10 V, {3} at first.":
    "Pince {0}, {1}, entre sus propias patillas: unos {2} para bajar de 10 V, {3} al principio.",
  "Clip {0}, {1} or more, wire-wound, across its own pins: about {2} to fall below 10 V.":
    "Pince {0}, {1} o más, bobinada, entre sus propias patillas: unos {2} para bajar de 10 V.",
  "Clip {0}, {1} or more, wire-wound, across its own pins: about {2} to fall below 10 V, {3} at first.":
    "Pince {0}, {1} o más, bobinada, entre sus propias patillas: unos {2} para bajar de 10 V, {3} al principio.",
  "By itself it may come back to {0} over hours: read it again after any pause.":
    "Por sí solo puede volver a {0} en unas horas: léalo otra vez después de cualquier pausa.",
  "Without one two such lamps in series do it in a flash; a dark lamp is no proof.":
    "Sin ella, dos de esas lámparas en serie lo hacen en un destello; una lámpara apagada no es prueba.",
  "Without one the {0} lamp across it does it in a flash; a dark lamp is no proof.":
    "Sin ella, la lámpara de {0} en sus extremos lo hace en un destello; una lámpara apagada no es prueba.",
  "under 0.1 J": "menos de 0.1 J",
  "a flash, then dark": "un destello, después apagada",
  "a flash, then dim": "un destello, después tenue",
  "slow pulsing: the lamp is too small for this board":
    "pulsa despacio: la lámpara es demasiado pequeña para esta placa",
  bright: "brillante",
  "stays bright": "sigue brillante",
  "a hard short: off, back to the cold checks":
    "un corto franco: apague y vuelva a las comprobaciones en frío",
  "dark at once, no bus": "apagada desde el principio, sin bus",
  "the feed is open": "la alimentación está abierta",
  lamp: "lámpara",
  "nothing warm to speak of after 2 min": "nada caliente digno de mención a los 2 min",
  "over the room after 2 min: {0}": "sobre el ambiente a los 2 min: {0}",
  heat: "calor",
  "smoke, a crackle, a smell": "humo, un chasquido, un olor",
  "lamp bright for more than {0} (a PTC is in the way)":
    "lámpara brillante más de {0} (hay un PTC en el camino)",
  "lamp bright for more than {0}": "lámpara brillante más de {0}",
  "supply at its limit for more than {0}": "fuente en su límite más de {0}",
  "a rail over by {0} or more": "una línea un {0} o más por encima",
  "bus above {0}, all that its capacitors bear":
    "bus por encima de {0}, todo lo que aguantan sus condensadores",
  "a part over {0} at 20 s, over {1} at 2 min (from outside, never by finger)":
    "una pieza por encima de {0} a los 20 s, de {1} a los 2 min (desde fuera, nunca con el dedo)",
  "small parts: what is hot now is shorted or overdriven":
    "piezas pequeñas: lo que ya está caliente está en corto o forzado",
  "the warmest parts against their band": "las piezas más calientes frente a su margen",
  "one thermal cycle, where it was worth the wait": "un ciclo térmico, donde valía la espera",
  "bench supply into a rail": "fuente de banco en una línea",
  "it pulsed, which may be the lamp itself, and no larger one is at hand":
    "pulsó, lo que puede ser la propia lámpara, y no hay otra mayor a mano",
  "it showed nothing that was written down: work on the board first":
    "no mostró nada que se anotara: primero trabaje en la placa",
  "it showed {0}: work on the board first": "mostró {0}: primero trabaje en la placa",
  "wants an isolated supply of 100 to 150 V DC with a current limit":
    "pide una fuente aislada de 100 a 150 V CC con límite de corriente",
  "wants a bench supply with a current limit": "pide una fuente de banco con límite de corriente",
  "nothing on this board that it could feed": "nada en esta placa que pudiera alimentar",
  "not needed: the board has borne more": "no hace falta: la placa ha aguantado más",
  "spares less than its minutes cost": "ahorra menos de lo que cuestan sus minutos",
  "wants a series lamp: 100 W, filament or halogen":
    "pide una lámpara en serie: 100 W, de filamento o halógena",
  "after the mains without its motor; then its plug goes back on":
    "después de la red sin su motor; entonces vuelve su conector",
  "{0}: until it reads well, or is overruled": "{0}: hasta que lea bien, o se decida lo contrario",
  "after the rung below": "después del peldaño inferior",
  "after the lamp has gone dark or dim, and the bus has been read at its volts":
    "después de que la lámpara se apague o quede tenue y el bus se haya leído con su tensión",
  "the bus": "el bus",
  "the {0} rail": "la línea {0}",
  "{0}, which its relay has to bypass": "{0}, que su relé debe puentear",
  "the supply of {0}": "la alimentación de {0}",
  "the coil of {0}": "la bobina de {0}",
  "Nothing can be read there: switch off and pull the plug.":
    "Allí no se puede leer nada: apague y desenchufe.",
  "Take the warmth of {0} now with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.":
    "Tome ahora la temperatura de {0} con la cámara o el termómetro puntual, a un palmo de distancia: nada toca una placa con tensión. Lo que se recalienta se ve antes de fallar.",
  "Take the warmth of {0} {1} after switch-on with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.":
    "Tome la temperatura de {0} a los {1} de encender con la cámara o el termómetro puntual, a un palmo de distancia: nada toca una placa con tensión. Lo que se recalienta se ve antes de fallar.",
  "The meter hangs on {0}: read it now, with the hands off the board, then switch off.":
    "El medidor está pinzado en {0}: léalo ahora, con las manos fuera de la placa, y después apague.",
  "The meter hangs on {0}: read it {1} after switch-on, with the hands off the board.":
    "El medidor está pinzado en {0}: léalo a los {1} de encender, con las manos fuera de la placa.",
  "It ran at idle, and that proves little: {0} with a dummy load of about {1} (three equal lamps in a star) show a boost that never starts, an inrush part left in the way, a supply that gives in.":
    "Funcionó en vacío, y eso prueba poco: {0} con una carga ficticia de unos {1} (tres lámparas iguales en estrella) muestran un elevador que nunca arranca, una pieza de arranque que quedó en el camino, una fuente que cede.",
  "It ran at idle, and that proves little: {0} with its own load, held fast, show a boost that never starts, an inrush part left in the way, a supply that gives in.":
    "Funcionó en vacío, y eso prueba poco: {0} con su propia carga, bien sujeta, muestran un elevador que nunca arranca, una pieza de arranque que quedó en el camino, una fuente que cede.",
  "Nobody reaches inside: a meter that is clipped on stays where it is.":
    "Nadie mete las manos dentro: un medidor pinzado se queda donde está.",
  "Clip the meter on first: {0}.": "Pince primero el medidor: {0}.",
  "A motor that was unplugged goes back on only once every store is proven empty.":
    "Un motor desconectado solo vuelve a conectarse cuando se ha comprobado vacío todo lo que guarda carga.",
  "Heatsink on, cover or barrier in place, then hands off.":
    "Disipador puesto, tapa o barrera en su sitio; después, manos fuera.",
  "Once it has run for {0}, or stopped before: switch off, pull the plug, and write down what it did until then.":
    "Cuando haya funcionado {0}, o se haya parado antes: apague, desenchufe y anote lo que hizo hasta entonces.",
  "What is doubted of it is worth the wait: let it get warm through, in sight, for {0}, or until it stops: switch off, pull the plug, and write down what it did until then.":
    "Lo que se duda de ella vale la espera: deje que se caliente del todo, a la vista, {0}, o hasta que se pare: apague, desenchufe y anote lo que hizo hasta entonces.",
  "The supply's own display shows what it gives: look twice at which lead is plus.":
    "La pantalla de la propia fuente muestra lo que da: mire dos veces qué cable es el positivo.",
  "Nothing is touched on a live board. Write down what was seen, then switch off and pull the plug.":
    "En una placa con tensión no se toca nada. Anote lo que se vio; después apague y desenchufe.",
  "Every store of charge is empty.": "Todo lo que guarda carga está vacío.",
  "The proof was overruled.": "Se decidió pasar sin la comprobación.",
  "The resistor comes off: it would show in every cold reading across it, and it must be off before power.":
    "La resistencia se quita: se vería en toda lectura en frío en sus extremos, y debe estar fuera antes de dar tensión.",
  "Nothing says yet that this board is dead: volts across every store of charge, at its own pins, before anything else is touched.":
    "Nada dice aún que esta placa esté sin tensión: voltios en todo lo que guarda carga, en sus propias patillas, antes de tocar cualquier otra cosa.",
  "Since power was last on these have not been proven empty: below 10 V at each one's own pins opens the cold checks.":
    "Desde la última vez que hubo tensión, estos no se han comprobado vacíos: menos de 10 V en las patillas propias de cada uno abre las comprobaciones en frío.",
  "What turned has charged the bus through the diodes of its switches: below 10 V at each one's own pins opens the cold checks again.":
    "Lo que giró ha cargado el bus a través de los diodos de sus conmutadores: menos de 10 V en las patillas propias de cada uno vuelve a abrir las comprobaciones en frío.",
  "The board is off and showed volts: something charges it. Is the plug out, does a motor or fan turn? Then below 10 V at each store's own pins.":
    "La placa está apagada y mostró voltios: algo la carga. ¿Está fuera el enchufe, gira un motor o ventilador? Después, menos de 10 V en las patillas propias de cada uno que guarda carga.",
  "A capacitor that is put on a board brings its own charge, and shares it: {0} below 10 V at its own pins opens the cold checks again.":
    "Un condensador que se monta en una placa trae su propia carga y la reparte: {0} por debajo de 10 V en sus propias patillas vuelve a abrir las comprobaciones en frío.",
  "{0} reads well, and its plug comes off all the same: the first power is without a motor. It goes back on once the board has borne the mains.":
    "{0} lee bien, y aun así se quita su conector: la primera tensión es sin motor. Vuelve cuando la placa haya aguantado la red.",
  "Before {0} is driven: its plug off, its windings and its insulation to earth read by themselves. A bad one kills the board again.":
    "Antes de mover {0}: su conector quitado, y sus devanados y su aislamiento a tierra leídos por separado. Uno malo vuelve a matar la placa.",
  "{0} goes back on its plug before power.": "{0} vuelve a su conector antes de dar tensión.",
  "{0} stays unplugged: the first power is without a motor.":
    "{0} sigue desconectado: la primera tensión es sin motor.",
  "{0} stays unplugged: {1}.": "{0} sigue desconectado: {1}.",
  "{0} is connected unread, as overruled.": "{0} está conectado sin leer, como se decidió.",
  "{0} reads well and is plugged in.": "{0} lee bien y está conectado.",
  "The windings of {0}, at its own plug, have to read alike; one that differs would take the new parts with it.":
    "Los devanados de {0}, en su propio conector, deben leer igual; uno que difiera se llevaría por delante las piezas nuevas.",
  "Insulation of {0} to its earth, its plug off.": "Aislamiento de {0} a su tierra, con su conector quitado.",
  "Insulation of {0} from a winding to its frame, its plug off, in megohms: an insulation tester on the motor alone, never on the board; else the highest ohms range.":
    "Aislamiento de {0} de un devanado a su carcasa, con su conector quitado, en megaohmios: un medidor de aislamiento solo en el motor, nunca en la placa; si no, el rango más alto de ohmios.",
  "Not read, it stays unplugged.": "Sin leer, sigue desconectado.",
  "The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.":
    "La línea a su propia tensión desde la fuente de banco dice lo que las comprobaciones en frío no pueden, y la red está lejos.",
  "Some volts across the bus with a small limit show a short that the mains would feed.":
    "Unos voltios en el bus con un límite pequeño muestran un corto que la red alimentaría.",
  "The small supply starts from an isolated bus before any mains is there.":
    "La fuente auxiliar arranca desde un bus aislado antes de que haya red.",
  "No cold check left is worth its minutes; power says more, and the lamp holds the mains back.":
    "No queda comprobación en frío que valga sus minutos; la tensión dice más, y la lámpara frena la red.",
  "No cold check left is worth its minutes; power says more.":
    "No queda comprobación en frío que valga sus minutos; la tensión dice más.",
  "Clip the meters on first.": "Pince primero los medidores.",
  "Then hands off.": "Después, manos fuera.",
  "Nothing read behind the lamp shows that the bus stands: gone dark proves nothing, a short behind a hot limiter goes dark too.":
    "Nada leído tras la lámpara muestra que el bus tenga su tensión: que se apague no prueba nada, un corto tras un limitador caliente también se apaga.",
  "Pulsing may only be the lamp: a larger one carries the board.":
    "El pulso puede ser solo la lámpara: una mayor sostiene la placa.",
  "The board bears power and shows no more by itself: once more, with the meter at another place.":
    "La placa aguanta la tensión y por sí sola no muestra más: otra vez, con el medidor en otro lugar.",
  "The lamp pulsed and did nothing else. That may be the lamp itself, and no larger one is at hand: on the mains at the risk told below.":
    "La lámpara pulsó y nada más. Puede ser la propia lámpara, y no hay otra mayor a mano: a la red con el riesgo que se indica abajo.",
  "The lamp showed nothing hard, and it passes too little to prove the board.":
    "La lámpara no mostró nada franco, y deja pasar demasiado poco para probar la placa.",
  "It bore the mains without its motor: now with it.": "Aguantó la red sin su motor: ahora con él.",
  "Hardly anything is believed left that power could break: what a lamp would spare is worth less than its minutes.":
    "Apenas se cree que quede algo que la tensión pueda romper: lo que ahorraría una lámpara vale menos que sus minutos.",
  "Set volts and limit with the leads in the air, switch off, clip on plus to plus, then switch on.":
    "Ajuste voltios y límite con los cables al aire, apague, pince positivo con positivo y después encienda.",
  "On the mains only through the right fuse.": "A la red solo a través del fusible correcto.",
  mains: "red",
  "lamp, {0}": "lámpara, {0}",
  "{0} into the bus": "{0} en el bus",
  "{0} into {1}": "{0} en {1}",
  diode: "diodo",
  farads: "capacidad",
  "look at {0}": "mirar {0}",
  "Nobody reaches inside: the meter, if one is clipped on, stays where it is.":
    "Nadie mete las manos dentro: el medidor, si hay uno pinzado, se queda donde está.",
  "red on {0}, black on {1}, AC volts ({2})": "rojo en {0}, negro en {1}, voltios CA ({2})",
  "red on {0}, black on {1}, DC volts ({2})": "rojo en {0}, negro en {1}, voltios CC ({2})",
  "{0}; second meter {1}": "{0}; segundo medidor: {1}",
  "Clip the meter on first: {0}. A lamp gone dark proves nothing until this shows that the bus stands.":
    "Pince primero el medidor: {0}. Una lámpara apagada no prueba nada hasta que esto muestre que el bus tiene su tensión.",
  "Clip the meter on first: {0}. What it shows tells most.":
    "Pince primero el medidor: {0}. Lo que muestre es lo que más dice.",
  "some parts die at switch-on with nothing else wrong":
    "algunas piezas mueren al encender sin que nada más esté mal",
  "{0} may be left ({1}), the likeliest cause": "puede quedar {0} ({1}), la causa más probable",
  "bench supply into the drive rail": "fuente de banco en la línea de excitación",
  "the rail, the drivers and the control side of the module, with no mains near":
    "la línea, los excitadores y el lado de control del módulo, con la red lejos",
  "20 to 100 mA and steady": "de 20 a 100 mA y estable",
  "over 200 mA or rising, the limit reached, or any part hot":
    "más de 200 mA o subiendo, el límite alcanzado, o alguna pieza caliente",
  "bench supply into a logic rail": "fuente de banco en una línea de lógica",
  "the regulator and the controller behind it, with no mains near":
    "el regulador y el controlador que cuelga de él, con la red lejos",
  "10 to 80 mA, and a light or the crystal alive": "de 10 a 80 mA, y una luz o el cristal con vida",
  "the limit reached, or the controller warm": "el límite alcanzado, o el controlador caliente",
  "low volts across the bus": "pocos voltios en el bus",
  "no short across the bus at some volts, and no switch that conducts by itself":
    "ningún corto en el bus a unos voltios, y ningún conmutador que conduzca solo",
  "the current falls to a few milliamps once the bus is charged":
    "la corriente baja a unos miliamperios una vez cargado el bus",
  "the current stays at the limit; clipped on the wrong way round, the body diodes conduct":
    "la corriente se queda en el límite; pinzado al revés, conducen los diodos internos",
  "100 to 150 V isolated across the bus": "de 100 a 150 V aislados en el bus",
  "the small supply starts and makes its rails": "la fuente auxiliar arranca y da sus líneas",
  "the rails come up and stay": "las líneas suben y se mantienen",
  "hiccup, heat, or the limit reached": "hipo, calor o el límite alcanzado",
  "mains through a series lamp": "red a través de una lámpara en serie",
  "inrush, bridge, bus, the relay's click, and the small supply at full volts":
    "arranque, puente, bus, el clic del relé y la fuente auxiliar a plena tensión",
  "the lamp flashes, then goes dark, the bus stands at its volts and the rails are right":
    "la lámpara destella y se apaga, el bus tiene su tensión y las líneas están bien",
  "bright and staying so: a hard short. Dark with no bus proves nothing: the feed is open, or a short hides behind a hot PTC":
    "brillante y sigue así: un corto franco. Apagada sin bus no prueba nada: la alimentación está abierta, o un corto se esconde tras un PTC caliente",
  "mains without the lamp, no motor": "red sin la lámpara, sin motor",
  "the drive at full energy: gate signals, no cross conduction, three phases equal":
    "la excitación a plena energía: señales de puerta, sin conducción cruzada, tres fases iguales",
  "it runs with nothing hot; where three equal lamps in star are at hand in the motor's place, they glow alike":
    "funciona sin nada caliente; si hay a mano tres lámparas iguales en estrella en lugar del motor, lucen por igual",
  "the fuse blows, something smokes, or a phase differs": "salta el fusible, algo humea o una fase difiere",
  "mains with its motor and load": "red con su motor y su carga",
  "everything, once it is warm through": "todo, una vez caliente del todo",
  "20 to 60 minutes at load without a trip": "de 20 a 60 minutos con carga sin disparo",
  "a trip, heat, or noise: off at once": "un disparo, calor o ruido: apague enseguida",
  "it starts through the lamp: on to the mains": "arranca a través de la lámpara: siga con la red",
  "after a flash: no hard short, on to the mains; dark at once with no bus volts: the feed is open":
    "tras un destello: ningún corto franco, siga con la red; apagada desde el principio sin voltios en el bus: la alimentación está abierta",
  "a load or a leak, no hard short": "una carga o una fuga, ningún corto franco",
  "the small supply ticks: a rail is loaded, or the lamp is too small":
    "la fuente auxiliar hace hipo: una línea está cargada, o la lámpara es demasiado pequeña",
  "if it stays: a hard short, switch off and go back to the cold checks":
    "si sigue así: un corto franco, apague y vuelva a las comprobaciones en frío",
  "nothing seen: read the bus at the clips": "nada visto: lea el bus en las pinzas",
  "whole as far as it shows: load it": "sana hasta donde se ve: cárguela",
  "no sign of life: back to the cold checks": "sin señal de vida: vuelva a las comprobaciones en frío",
  "it holds for as long as it was run": "aguanta todo el tiempo que se hizo funcionar",
  "it stopped by itself: weak once it is warm or loaded": "se paró sola: débil cuando se calienta o se carga",
  "it trips once it is loaded: weak, or a leak that cooks":
    "hace saltar la protección al cargarla: débil, o una fuga que se recalienta",
  "a short is left: back to the cold checks, no new fuse before it is found":
    "queda un corto: vuelva a las comprobaciones en frío, ningún fusible nuevo antes de encontrarlo",
  "a short, or a leak to earth: back to the cold checks":
    "un corto, o una fuga a tierra: vuelva a las comprobaciones en frío",
  "switch off at once and look for what burnt": "apague enseguida y busque lo que se quemó",
  "the supply is at its limit: switch off, find the load":
    "la fuente está en su límite: apague, busque la carga",
  lit: "encendida",
  "stays dark": "sigue apagada",
  clicks: "hace clic",
  "no click": "sin clic",
  turns: "gira",
  "stands still": "parado",
  "signs of life": "señales de vida",
  "all signs of life": "todas las señales de vida",
};
