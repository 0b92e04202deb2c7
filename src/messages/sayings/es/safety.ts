import type { Sayings } from "../../said.ts";

export const SAFETY: Sayings = {
  "Unplug it and wait 5 to 15 minutes: what is stored does not need the mains.":
    "Desenchúfela y espere de 5 a 15 minutos: lo que está almacenado no necesita la red.",
  "Meter and leads marked CAT III, or CAT II at least, for these volts.":
    "Medidor y cables marcados CAT III, o CAT II como mínimo, para estos voltios.",
  "Highest DC range, one hand, probes on the capacitor's own pins: bleeders and dark LEDs prove nothing.":
    "El rango de CC más alto, una mano, puntas en las patillas propias del condensador: las resistencias de drenaje y los LED apagados no prueban nada.",
  "Discharge through the resistor with insulated clips, never with a screwdriver; the resistor gets hot.":
    "Descargue a través de la resistencia con pinzas aisladas, nunca con un destornillador; la resistencia se calienta.",
  "The resistor may still be hot: hold it by its insulated clips.":
    "La resistencia puede estar aún caliente: sujétela por sus pinzas aisladas.",
  "Switch off, pull the plug, and count the bus as charged until it has been measured again.":
    "Apague, desenchufe y considere el bus cargado hasta que se haya medido otra vez.",
  "The bus can creep back up, a large capacitor to 10 to 50 V: if anything was left a while, measure its volts again before touching.":
    "El bus puede volver a subir poco a poco, un condensador grande hasta entre 10 y 50 V: si algo se dejó un rato, mida otra vez sus voltios antes de tocar.",
  "A capacitor may hold charge in the hand too: empty it through the resistor before it goes in.":
    "Un condensador puede guardar carga también en la mano: vacíelo a través de la resistencia antes de montarlo.",
  "Do not turn the motor or a fan while it is plugged in: it charges the bus. If it turned, say so.":
    "No gire el motor ni un ventilador mientras esté conectado: carga el bus. Si giró, dígalo.",
  "An insulation tester goes on the motor alone: plug out, its leads joined, against its frame. Never on the board.":
    "Un medidor de aislamiento va solo en el motor: conector fuera, sus hilos unidos, contra su carcasa. Nunca en la placa.",
  "No insulation tester on a populated board: it kills chips and over-volts capacitors.":
    "Ningún medidor de aislamiento en una placa con componentes: mata chips y da sobretensión a los condensadores.",
  "What has been powered counts as charged: prove every capacitor empty once more before it is packed or handed over.":
    "Lo que ha tenido tensión se considera cargado: compruebe otra vez que cada condensador está vacío antes de embalar o entregar.",
  "Hot iron and fumes: eye protection and extraction; gloves for burnt resin.":
    "Soldador caliente y humos: protección ocular y extracción; guantes para la resina quemada.",
  "Take a picture first. No power until it is fully dry: hours of warm air, not minutes.":
    "Primero haga una foto. Sin tensión hasta que esté del todo seca: horas de aire caliente, no minutos.",
  "Pads lift, most of all on single-sided boards: add fresh solder, preheat, do not pull.":
    "Las pistas se levantan, sobre todo en placas de una cara: añada estaño nuevo, precaliente, no tire.",
  "Fit the same insulation pad and fresh paste as before; then check the tab against the heatsink.":
    "Monte la misma almohadilla aislante y pasta nueva como antes; después compruebe la aleta contra el disipador.",
  "Hands off while it is live: clip meters on before power, cover the board, wear eye protection, parts can burst.":
    "Manos fuera mientras tenga tensión: pince los medidores antes de darla, cubra la placa, use protección ocular, las piezas pueden reventar.",
  "Bus minus is at mains potential, and a heatsink may be.":
    "El bus negativo está al potencial de la red, y un disipador puede estarlo.",
  "The isolation transformer feeds this board alone and passes no earth on; a residual-current breaker (RCD) behind it does nothing.":
    "El transformador de aislamiento alimenta solo esta placa y no deja pasar la tierra; un diferencial (RCD) tras él no hace nada.",
  "Best is an isolation transformer for the board alone. A residual-current breaker (RCD) helps, but it does not see a touch across the bus or from line to neutral.":
    "Lo mejor es un transformador de aislamiento solo para la placa. Un diferencial (RCD) ayuda, pero no ve un contacto entre los polos del bus ni de fase a neutro.",
  "No earth clip of the oscilloscope on bus minus, which is a short: isolate the board, never the instrument, or use a differential probe.":
    "Nunca la pinza de tierra del osciloscopio en el bus negativo, que es un corto: aísle la placa, nunca el instrumento, o use una sonda diferencial.",
  "The lamp limits what the mains gives, not the energy stored in the bus capacitors.":
    "La lámpara limita lo que da la red, no la energía almacenada en los condensadores del bus.",
  "Check the polarity twice and never exceed the rail's own voltage.":
    "Compruebe la polaridad dos veces y nunca supere la tensión propia de la línea.",
  "Volts and current limit are set with the output off, then it is clipped on: 0.4 V at most to begin with.":
    "Los voltios y el límite de corriente se ajustan con la salida apagada, después se pinza: 0.4 V como máximo para empezar.",
  "A shorted ceramic or tantalum that is fed can crack, burst or glow: low volts first, output off at the first smell or smoke.":
    "Un cerámico o tántalo en corto, alimentado, puede agrietarse, reventar o ponerse al rojo: primero pocos voltios, salida apagada al primer olor o humo.",
  "Hands off while it is live: only read the meter that hangs on it.":
    "Manos fuera mientras tenga tensión: solo lea el medidor que está pinzado en ella.",
  "Local codes and the rules for licensed electrical work come first; where they say otherwise, follow them.":
    "Las normas locales y las reglas del trabajo eléctrico autorizado van primero; donde digan otra cosa, sígalas.",
  "Series lamp {0} (filament or halogen, never LED): it passes at most about {1}, and the board draws about under 1 W at idle.":
    "Lámpara en serie de {0} (de filamento o halógena, nunca LED): deja pasar como mucho unos {1}, y la placa toma menos de 1 W en reposo.",
  "Series lamp {0} (filament or halogen, never LED): it passes at most about {1}, and the board draws about {2} at idle.":
    "Lámpara en serie de {0} (de filamento o halógena, nunca LED): deja pasar como mucho unos {1}, y la placa toma unos {2} en reposo.",
  "That is little: slow pulsing may only mean that the lamp is too small.":
    "Es poco: un pulso lento puede significar solo que la lámpara es demasiado pequeña.",
  "This bench lists no series lamp: a 100 W filament lamp in series would save parts if a short is left. Without one, power up only through the right fuse and a breaker you can reach.":
    "Este banco no tiene lámpara en serie: una lámpara de filamento de 100 W en serie salvaría piezas si queda un corto. Sin ella, dé tensión solo a través del fusible correcto y de un interruptor a su alcance.",
  "{0} has not been read": "{0} no se ha leído",
  "{0}: pull its plug, and read its windings and its insulation before it is driven":
    "{0}: quite su conector y lea sus devanados y su aislamiento antes de moverlo",
  "a winding of {0} is open": "un devanado de {0} está abierto",
  "the windings of {0} are not alike ({1} to {2})": "los devanados de {0} no son iguales ({1} a {2})",
  "the insulation of {0} to earth could not be read": "no se pudo leer el aislamiento de {0} a tierra",
  "{0} reads under {1} to earth; cold and full a compressor reads low: read it again warm":
    "{0} lee menos de {1} a tierra; frío y lleno, un compresor lee bajo: léalo otra vez caliente",
  "{0} reads under {1} to earth": "{0} lee menos de {1} a tierra",
  "A hermetic compressor reads over {0}; lower when cold and full: then again warm; the maker's limit goes before it.":
    "Un compresor hermético lee más de {0}; menos si está frío y lleno: entonces otra vez en caliente; el límite del fabricante va por delante.",
  "Common practice is over {0}; the maker's limit goes before it.":
    "Lo habitual es más de {0}; el límite del fabricante va por delante.",
  "{0}, or overrule with a reason (overrule motor WHY)":
    "{0}, o decida lo contrario con un motivo (overrule motor WHY)",
  "{0} is still clipped on between {1} and {2}: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live":
    "{0} sigue pinzado entre {1} y {2}: quítelo antes de dar tensión (unclip), o decida lo contrario con un motivo; si se deja, se quema, y alguien lo tocará con tensión",
  "{0} is still clipped on between {1} and {2} (and {3} more): take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live":
    "{0} sigue pinzado entre {1} y {2} (y {3} más): quítelo antes de dar tensión (unclip), o decida lo contrario con un motivo; si se deja, se quema, y alguien lo tocará con tensión",
};
