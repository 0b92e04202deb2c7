import type { Sayings } from "../../said.ts";

export const PARTS_2: Sayings = {
  "a higher voltage is harmless, whatever the ESR": "una tensión mayor no hace daño, sea cual sea la ESR",
  "capacitor type": "tipo de condensador",
  "each type has its own losses, leakage and way of dying":
    "cada tipo tiene sus pérdidas, su fuga y su forma de morir",
  "voltage of a dry capacitor": "tensión de un condensador seco",
  "it stands it for life": "la soporta de por vida",
  "capacitor voltage": "tensión del condensador",
  "450 V for 400 V is welcome; a surge of more than 1.15 times the rating is not borne":
    "450 V en vez de 400 V es bienvenido; un pico de más de 1.15 veces lo nominal no se aguanta",
  "not far above in voltage": "no muy por encima en tensión",
  "at most twice the voltage": "como máximo el doble de tensión",
  "over twice the voltage it is another part: taller, of other ESR":
    "con más del doble de tensión es otra pieza: más alta, de otra ESR",
  "bus capacitance": "capacidad del bus",
  "less is more ripple; more is more inrush through PTC, relay and bridge":
    "menos es más rizado; más es más arranque por PTC, relé y puente",
  "a bigger bus capacitor is better": "un condensador de bus más grande es mejor",
  "rail capacitance": "capacidad de la línea",
  "less is ripple; far more upsets the supply's start":
    "menos es rizado; mucho más altera el arranque de la fuente",
  "capacitance at a supply pin": "capacidad en una patilla de alimentación",
  "it sets the start-up time: too large, and the supply tries for ever":
    "fija el tiempo de arranque: demasiado grande, y la fuente lo intenta sin fin",
  "a bigger capacitor is better": "un condensador más grande es mejor",
  "ripple is what heats and dries it": "el rizado es lo que lo calienta y lo seca",
  "behind a switching supply a general-purpose type boils":
    "tras una fuente conmutada, uno de uso general hierve",
  "105 degC": "105 degC",
  "ten degrees are half of its life": "diez grados son la mitad de su vida",
  "a cover or a housing stands over it": "una tapa o una carcasa queda encima",
  "snap-in legs do not bend, and bent legs shorten the creepage":
    "las patas snap-in no se doblan, y las dobladas acortan la línea de fuga",
  "one type in the bank": "un solo tipo en el banco",
  "the newest takes most of the ripple": "el más nuevo se lleva casi todo el rizado",
  "class of an X capacitor": "clase de un condensador X",
  "it stands across the mains for life and must not burn: X1 for X2 will do, a plain film never":
    "está sobre la red de por vida y no debe arder: X1 por X2 vale, una película corriente nunca",
  "any film capacitor of the voltage will do": "cualquier condensador de película de esa tensión vale",
  "class of a Y capacitor": "clase de un condensador Y",
  "only it stands between mains and a touchable earth: it must fail open":
    "solo él está entre la red y una tierra que se puede tocar: debe fallar abierto",
  "any ceramic of the voltage will do": "cualquier cerámico de esa tensión vale",
  "mains voltage of a safety capacitor": "tensión de red de un condensador de seguridad",
  "for life": "de por vida",
  "capacitance of an X capacitor": "capacidad de un condensador X",
  "less filters less; more outlasts the bleeder at the plug":
    "menos filtra menos; más dura más que la descarga en el enchufe",
  "capacitance of a Y capacitor": "capacidad de un condensador Y",
  "more is more current in the earth wire, and trips the residual-current breaker":
    "más es más corriente en el hilo de tierra, y hace saltar el diferencial",
  "resonant capacitance": "capacidad resonante",
  "it sets the frequency and the peak at the switch": "fija la frecuencia y el pico en el transistor",
  "current of a resonant capacitor": "corriente de un condensador resonante",
  "the whole coil current runs through it": "toda la corriente de la bobina pasa por él",
  "film capacitance": "capacidad de película",
  "it takes the edges off the bus": "quita los flancos del bus",
  "ceramic capacitance": "capacidad cerámica",
  "a timing or a filter may rest on it": "un tiempo o un filtro puede depender de ella",
  "reverse voltage of a diode": "tensión inversa de un diodo",
  "the peak of the mains or of the bus stands on it": "sobre él está el pico de la red o del bus",
  "reverse voltage": "tensión inversa",
  "output plus reflected voltage behind a transformer, with a quarter to spare":
    "tensión de salida más la reflejada tras un transformador, con un cuarto de margen",
  "rectified current": "corriente rectificada",
  "it heats with every ampere": "se calienta con cada amperio",
  "surge current of a bridge": "corriente de pico de un puente",
  "the capacitors' first charge goes through it; in one family 15 A and 25 A parts both stand 300 A, only the 35 A part 400 A":
    "por él pasa la primera carga de los condensadores; en una familia las piezas de 15 A y 25 A soportan ambas 300 A, solo la de 35 A soporta 400 A",
  "a bridge of 25 A for one of 15 A cures surge failures":
    "un puente de 25 A por uno de 15 A cura los fallos por pico",
  "the fuse has to blow before it": "el fusible tiene que saltar antes que él",
  "surge current of a mains diode": "corriente de pico de un diodo de red",
  "the capacitor's first charge": "la primera carga del condensador",
  "each recovery is a short circuit across the switch, tens of thousands of times a second":
    "cada recuperación es un cortocircuito sobre el transistor, decenas de miles de veces por segundo",
  "fast stays fast": "lo rápido sigue rápido",
  "a mains rectifier burns within minutes there, even where one left the factory in that place":
    "un rectificador de red se quema ahí en minutos, aunque alguno saliera así de fábrica",
  "1N4007 everywhere": "1N4007 en todas partes",
  "an ultrafast diode drops twice as much: it runs hotter, and the rail comes out low":
    "un diodo ultrarrápido cae el doble: se calienta más, y la línea sale baja",
  "the drop is taken from the rail and becomes heat": "la caída se quita de la línea y se vuelve calor",
  "silicon carbide": "carburo de silicio",
  "the next one to measure it has to know": "quien mida después tiene que saberlo",
  "recovery of a signal diode": "recuperación de un diodo de señal",
  "fast edges pass it": "por él pasan flancos rápidos",
  "plus, minus and the two AC pins stand in more than one order":
    "positivo, negativo y las dos patillas AC están en más de un orden",
  "holes, pitch and screw": "agujeros, paso y tornillo",
  "the cathode is the bus, or the anode the switch, on the heatsink":
    "el cátodo es el bus, o el ánodo el transistor, sobre el disipador",
  "a metal tab is the same part, only cheaper": "una aleta metálica es la misma pieza, solo que más barata",
  "a pair together": "la pareja junta",
  "a mismatch loads one of them with most of the current":
    "si no son iguales, uno se lleva casi toda la corriente",
  "of a parallel pair change only the dead one": "de una pareja en paralelo cambiar solo el muerto",
  "clamp voltage": "tensión del zener de puerta",
  "lower, it steals the drive; higher, the gate breaks first":
    "más baja, roba la excitación; más alta, la puerta se rompe antes",
  "zener voltage": "tensión zener",
  "it sets a level that something relies on": "fija un nivel del que algo depende",
  "zener power": "potencia del zener",
  "it takes what comes through a broken gate": "se lleva lo que pasa por una puerta rota",
  "NPN and PNP stand in one totem pole": "NPN y PNP están en un mismo tótem",
  "collector voltage": "tensión de colector",
  "it blocks its supply, and the kick of a coil": "bloquea su alimentación y el golpe de una bobina",
  "collector current": "corriente de colector",
  "a gate is charged in amperes": "una puerta se carga con amperios",
  "pin order of a transistor": "orden de patillas de un transistor",
  "E B C and E C B are both sold in one case": "E B C y E C B se venden ambos en la misma cápsula",
  "a fuse one size up, or slow instead of quick": "un fusible un valor mayor, o lento en vez de rápido",
  "no wire for a fuse": "nunca un hilo por un fusible",
  "the tracks become the fuse; a repairable board burns. Lamp and cold checks tell the same":
    "las pistas se vuelven el fusible; arde una placa reparable. La lámpara y las comprobaciones en frío dicen lo mismo",
  "bridge the blown fuse to test": "puentear el fusible fundido para probar",
  "no wire for an inrush part": "nunca un hilo por un limitador de arranque",
  "the inrush welds the relay and kills the bridge": "el arranque suelda el relé y mata el puente",
  "a wire instead of the NTC": "un hilo en lugar de la NTC",
  "a part was there for a reason": "había una pieza por algo",
  "fuse current": "corriente del fusible",
  "exactly the original's": "exactamente la del original",
  "fuse voltage": "tensión del fusible",
  "below it the arc does not go out": "por debajo de ella el arco no se apaga",
  "quick or slow": "rápido o lento",
  "quick saves the bridge, slow outlives the inrush":
    "el rápido salva el puente, el lento sobrevive al arranque",
  "on the mains a low one bursts": "en la red, uno bajo revienta",
  "ceramic on the mains": "cerámico en la red",
  "a ceramic body of high breaking capacity": "un cuerpo cerámico de alto poder de corte",
  "glass is for where the current is already limited":
    "el vidrio es para donde la corriente ya está limitada",
  "fuse size": "tamaño del fusible",
  "it has to sit in its clips": "tiene que asentar en sus pinzas",
  "varistor voltage": "tensión del varistor",
  "higher protects nothing, lower dies of the mains": "más alta no protege nada, más baja muere por la red",
  "275, 300 and 320 V are three varistors: what stands on it for ever is not a matter of a tenth":
    "275, 300 y 320 V son tres varistores: lo que está sobre él para siempre no es cuestión de un décimo",
  "disc of a varistor": "disco de un varistor",
  "the disc is the energy it takes": "el disco es la energía que aguanta",
  "a worn varistor burns without it": "un varistor gastado arde sin él",
  "cold resistance": "resistencia en frío",
  "it sets the first current, and how long the bus takes": "fija la primera corriente y cuánto tarda el bus",
  "current of an inrush part": "corriente de un limitador de arranque",
  "an NTC carries the load for ever": "una NTC lleva la carga para siempre",
  "energy of an inrush part": "energía de un limitador de arranque",
  "it takes as much as the bus stores": "aguanta tanta como guarda el bus",
  "it pulls in, or it does not": "atrae, o no atrae",
  "coil current": "corriente de bobina",
  "the array that pulls it has a limit": "el array que la activa tiene un límite",
  "contact current": "corriente de contacto",
  "contacts weld": "los contactos se sueldan",
  "pins of a relay": "patillas de un relé",
  "coil and contact stand in more than one order": "bobina y contacto están en más de un orden",
  "shunt value": "valor del shunt",
  "trip and current sense are scaled by it; two in parallel will do":
    "disparo y medida de corriente se escalan con él; dos en paralelo valen",
  "drift of a shunt": "deriva de un shunt",
  "it runs hot, and the trip moves with it": "se calienta, y el disparo se mueve con él",
  "the sense pair reads no solder joint": "el par de medida no lee ninguna soldadura",
  "resistor value": "valor de resistencia",
  "a divider or a time rests on it": "un divisor o un tiempo depende de ella",
  "power of a resistor": "potencia de una resistencia",
  "it drifts where it runs hot": "deriva donde se calienta",
  "voltage of a resistor": "tensión de una resistencia",
  "a row of several shares the voltage: not one chip where three were":
    "una fila de varias reparte la tensión: no un chip donde había tres",
  "one resistor of the sum will do": "una resistencia de la suma vale",
  fusible: "fusible",
  "fusible and flameproof": "fusible e ignífuga",
  "it is the small supply's fuse, and must open without a flame":
    "es el fusible de la fuente auxiliar, y debe abrir sin llama",
  "any resistor of the value will do": "cualquier resistencia de ese valor vale",
  "use of an optocoupler": "uso de un optoacoplador",
  "one that drives a gate has a driver inside and is fast; one for feedback is neither":
    "el que excita una puerta lleva un driver dentro y es rápido; el de realimentación ni lo uno ni lo otro",
  "lowest transfer ratio": "relación de transferencia mínima",
  "below it the loop has no grip, or the input is not seen":
    "por debajo el lazo no tiene agarre, o la entrada no se ve",
  "highest transfer ratio": "relación de transferencia máxima",
  "above it the loop may swing": "por encima el lazo puede oscilar",
  isolation: "aislamiento",
  "it stands between mains and hand": "está entre la red y la mano",
  "speed of an optocoupler": "velocidad de un optoacoplador",
  "dead time and data were set for the original": "tiempo muerto y datos se ajustaron para el original",
  "regulated voltage": "tensión regulada",
  "a rail's chips stand little more than it": "los chips de una línea soportan poco más",
  "current of a regulator": "corriente de un regulador",
  "it shuts down warm otherwise": "si no, se apaga al calentarse",
  "tab and pins": "aleta y patillas",
  "two orders are sold in one case": "se venden dos órdenes en una cápsula",
  "holes, pitch and heat": "agujeros, paso y calor",
  "an empty chip does nothing; only one from the same board number carries this program":
    "un chip vacío no hace nada; solo uno de la misma referencia de placa lleva este programa",
  "identical chip": "chip idéntico",
  "its pins are what its program makes of them": "sus patillas son lo que su programa hace de ellas",
  "same chip": "mismo chip",
  "compare pins, supply and logic on both data sheets":
    "comparar patillas, alimentación y lógica en ambas hojas de datos",
  "a bigger IGBT is always better": "un IGBT más grande siempre es mejor",
  "any 600 V 40 A IGBT will do for boost and motor":
    "cualquier IGBT de 600 V 40 A vale para elevador y motor",
  "an IGBT without a diode is fine, the body diode is there":
    "un IGBT sin diodo está bien, ya está el diodo del cuerpo",
  "a MOSFET for an IGBT, same volts": "un MOSFET por un IGBT, mismos voltios",
  "blocking voltage": "tensión de bloqueo",
  "it blocks the bus and the spike of every switching": "bloquea el bus y el pico de cada conmutación",
  "current when warm": "corriente en caliente",
  "the printed amps are those of a cold case": "los amperios impresos son los de una cápsula fría",
  "not far bigger": "no mucho mayor",
  "1.5 to 2 times the current is the most; beyond, short-circuit time and gate differ":
    "1.5 a 2 veces la corriente es lo máximo; más allá cambian tiempo de cortocircuito y puerta",
  "more starves driver, bootstrap and 15 V supply, and slows every edge":
    "más agota al driver, al bootstrap y a la fuente de 15 V, y hace lento cada flanco",
  "short-circuit rated": "apto para cortocircuito",
  "5 us or more": "5 us o más",
  "a blocked or shorted motor is a short circuit until the driver has noticed":
    "un motor bloqueado o en corto es un cortocircuito hasta que el driver lo nota",
  "a diode inside": "un diodo dentro",
  "the motor's or the coil's current comes back through it; an IGBT has no body diode of its own":
    "la corriente del motor o de la bobina vuelve por él; un IGBT no tiene diodo de cuerpo propio",
  "diode where one was": "diodo donde había uno",
  "some boost stages run back through it": "algunas etapas elevadoras devuelven corriente por él",
  "speed class of a boost switch": "clase de velocidad del transistor elevador",
  "a motor type turns off too slowly for tens of kilohertz and overheats":
    "un tipo para motor se apaga demasiado lento para decenas de kilohercios y se recalienta",
  "resonant type": "tipo resonante",
  "it is switched at zero volts with a long tail of current; other types overheat there":
    "se conmuta a cero voltios con una larga cola de corriente; otros tipos se recalientan ahí",
  "no MOSFET in a leg": "ningún MOSFET en una rama",
  "on-resistance at full current, the slow diode in its body, another gate":
    "resistencia en conducción a plena corriente, el diodo lento de su cuerpo, otra puerta",
  "MOSFET only after a check of the design": "MOSFET solo tras revisar el diseño",
  "losses, recovery and gate drive are another design's":
    "pérdidas, recuperación y excitación de puerta son de otro diseño",
  saturation: "saturación",
  "each tenth of a volt is heat at full current": "cada décima de voltio es calor a plena corriente",
  "one type in all legs": "un solo tipo en todas las ramas",
  "unlike switches share heat and edges unequally, and the driver's dead time was set for one type":
    "transistores distintos reparten mal calor y flancos, y el tiempo muerto del driver se ajustó para un tipo",
  "a mismatch loads the new one or the old one with most of the current":
    "si no son iguales, el nuevo o el viejo se lleva casi toda la corriente",
  "drain current": "corriente de drenador",
  "the start of every cycle is a current peak": "cada ciclo empieza con un pico de corriente",
  "more is more heat, and a small case has no sink":
    "más es más calor, y una cápsula pequeña no tiene disipador",
  "gate charge of an off-line switch": "carga de puerta del conmutador de la fuente",
  "its controller drives little": "su controlador excita poco",
  "same family of switcher": "misma familia de conmutador",
  "pins, current limit and feedback are the family's own":
    "patillas, límite de corriente y realimentación son propios de la familia",
  "power of a switcher": "potencia de un conmutador",
  "the next bigger sister fits once its current limit and its feedback have been compared; the smaller does not":
    "la hermana mayor siguiente encaja una vez comparados su límite de corriente y su realimentación; la menor no",
  "frequency of a switcher": "frecuencia de un conmutador",
  "the transformer was wound for one frequency": "el transformador se bobinó para una frecuencia",
  "crossed leads over a heatsink are the next fault":
    "patas cruzadas sobre un disipador son el próximo fallo",
  "holes, screw, clip and height on the heatsink": "agujeros, tornillo, brida y altura en el disipador",
  "a live tab puts collector or drain on the heatsink, which may be touched or may be a shorted bus":
    "una aleta con tensión pone colector o drenador en el disipador, que puede tocarse o ser un bus en corto",
  "modules look alike and are not": "los módulos parecen iguales y no lo son",
  "current of a module": "corriente de un módulo",
  "the shunt outside sets the trip for the original's current":
    "el shunt externo fija el disparo para la corriente del original",
  "bootstrap diodes": "diodos de bootstrap",
  "without them the upper switches have no supply":
    "sin ellos los transistores superiores no tienen alimentación",
  "the wrong sense turns both switches of a leg on":
    "el sentido equivocado enciende los dos transistores de una rama",
  "shunt inside or outside": "shunt dentro o fuera",
  "the board reads the current where it was": "la placa lee la corriente donde estaba",
  "another threshold trips early, or too late": "otro umbral dispara pronto, o demasiado tarde",
  "the controller reads the old curve": "el controlador lee la curva antigua",
  "three shunts need three emitters": "tres shunts necesitan tres emisores",
  "height on the heatsink": "altura en el disipador",
  "spacers and screws were cut for one height": "separadores y tornillos se cortaron para una altura",
};
