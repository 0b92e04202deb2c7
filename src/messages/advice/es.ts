import type { Translated } from "../catalogue.ts";
import type { ADVICE } from "./en.ts";

/** Spanish. */
export const ADVICE_ES = {
  "caution.charged": [
    "DANGER: the capacitors of this board can hold a deadly charge long after it is unplugged. Disconnect every supply, wait at least 15 minutes, then measure: bus plus to bus minus must read below 10 V before anything is touched.",
    "PELIGRO: los condensadores de esta placa pueden conservar una carga mortal mucho después de desenchufarla. Desconecte toda alimentación, espere al menos 15 minutos y después mida: entre bus positivo y bus negativo debe haber menos de 10 V antes de tocar nada.",
  ],
  "caution.live": [
    "With power on, every part of this board is at mains potential, bus minus included and the heatsink possibly too. Touch nothing.",
    "Con tensión, toda la placa está al potencial de la red, incluido el bus negativo y quizá el disipador. No toque nada.",
  ],
  "caution.licensed": [
    "Fitting, connecting and opening the unit is work for a licensed person under the local codes. This paper does not replace them, nor the maker's instructions.",
    "Montar, conectar y abrir el equipo es trabajo de una persona autorizada según las normas locales. Este papel no sustituye a las normas ni a las instrucciones del fabricante.",
  ],
  "caution.smell": [
    "Smoke, a burnt smell, a tripped breaker or a blown fuse: switch off and do not try again.",
    "Humo, olor a quemado, un interruptor que salta o un fusible fundido: desconecte y no lo intente de nuevo.",
  ],
  "advice.surge.protect": [
    "Have a surge protector fitted at the supply, its earth wire short, and have the earth itself checked.",
    "Haga instalar un protector contra sobretensiones en la alimentación, con un cable de tierra corto, y haga revisar la propia tierra.",
  ],
  "advice.surge.others": [
    "A surge may have hurt other units on the same supply: have them checked.",
    "Una sobretensión puede haber dañado otros equipos de la misma alimentación: hágalos revisar.",
  ],
  "advice.water.seal": [
    "Find where water or condensation got in and stop it there: cable entries from below, sealed, with a drip loop; drain holes kept open.",
    "Busque por dónde entró el agua o la condensación y ciérrelo: entradas de cable por abajo, selladas, con un bucle de goteo; desagües libres.",
  ],
  "advice.water.later": [
    "Corrosion can go on under the parts: after water a later failure stays more likely than after other causes.",
    "La corrosión puede seguir bajo las piezas: después del agua, un fallo posterior sigue siendo más probable que con otras causas.",
  ],
  "advice.overload.load": [
    "Find out why it was overloaded before it runs again: does the motor or fan turn freely, is anything blocked, are its windings and insulation sound?",
    "Averigüe por qué se sobrecargó antes de volver a usarlo: ¿gira libre el motor o ventilador, hay algo bloqueado, están bien sus devanados y su aislamiento?",
  ],
  "advice.overload.air": [
    "Keep the heatsink and the path of its air clean.",
    "Mantenga limpios el disipador y el paso del aire.",
  ],
  "advice.age.heat": [
    "Heat ages capacitors and fans: keep the unit cool and have both checked every few years.",
    "El calor envejece condensadores y ventiladores: mantenga fresco el equipo y haga revisar ambos cada pocos años.",
  ],
  "advice.insects.mesh": [
    "Close openings with fine mesh that does not stop the cooling air, and have the inside looked at once a year.",
    "Cierre las aberturas con malla fina que no frene el aire de refrigeración y haga mirar el interior una vez al año.",
  ],
  "advice.impact.fasten": [
    "Fasten the unit so that it cannot shake, and check plugs and screws after every transport.",
    "Fije el equipo para que no vibre y revise conectores y tornillos después de cada transporte.",
  ],
  "advice.unknown.tell": [
    "The cause is not known: if it happens again, tell us at once, and what happened just before.",
    "La causa no se conoce: si vuelve a pasar, avísenos enseguida y diga qué ocurrió justo antes.",
  ],
  "fit.off": [
    "Switch off, unplug or lock off, and make sure that nobody can switch on again.",
    "Desconecte, desenchufe o bloquee el interruptor, y asegúrese de que nadie pueda volver a conectar.",
  ],
  "fit.measure": [
    "Wait at least 15 minutes, then measure on the highest DC range between bus plus and bus minus: below 10 V. Only then touch.",
    "Espere al menos 15 minutos y mida en el rango de CC más alto entre bus positivo y bus negativo: menos de 10 V. Solo entonces toque.",
  ],
  "fit.turns": [
    "Do not let the motor or fan turn while it is plugged in: turning, it charges the bus.",
    "No deje girar el motor o ventilador mientras esté conectado: al girar carga el bus.",
  ],
  "fit.never": [
    "Never plug in or pull out the fan, the motor or any other plug while the unit has power. Switch off, wait, measure, then plug.",
    "Nunca conecte ni desconecte el ventilador, el motor ni ningún otro conector con tensión en el equipo. Desconecte, espere, mida y después enchufe.",
  ],
  "fit.marks": [
    "Go by the marks on the wires and by what was noted or photographed on arrival. Where neither tells, go by the maker's drawing; do not guess.",
    "Guíese por las marcas de los cables y por lo anotado o fotografiado a la llegada. Si nada lo dice, por el esquema del fabricante; no adivine.",
  ],
  "fit.bus": [
    "Bus plus and bus minus are never exchanged: exchanged, the board is destroyed at once.",
    "Bus positivo y bus negativo nunca se cruzan: cruzados, la placa se destruye al instante.",
  ],
  "fit.phases": [
    "The motor's phases go back in the order in which they were. If it turns the wrong way: switch off, wait, measure, then exchange two of them.",
    "Las fases del motor vuelven en el orden en que estaban. Si gira al revés: desconecte, espere, mida y después cambie dos de ellas.",
  ],
  "fit.earth": [
    "The protective earth is connected first and taken off last.",
    "La tierra de protección se conecta la primera y se quita la última.",
  ],
  "mount.clean": [
    "Clean both faces until no old paste is left; replace an insulating pad that was squeezed once.",
    "Limpie ambas caras hasta que no quede pasta vieja; sustituya una almohadilla aislante que ya se haya apretado.",
  ],
  "mount.film": [
    "A thin even film of paste, no more than fills the grooves; a dry pad takes none.",
    "Una película fina y uniforme de pasta, solo la que llena los surcos; una almohadilla seca no lleva pasta.",
  ],
  "mount.screws": [
    "All screws by hand first, crosswise; then the full torque, crosswise.",
    "Primero todos los tornillos a mano, en cruz; después el par completo, en cruz.",
  ],
  "mount.sheet": [
    "The part's own data sheet wins over this table. A power module, and any case that is not in it, takes the torque of its data sheet.",
    "La hoja de datos de la propia pieza prevalece sobre esta tabla. Un módulo de potencia, y todo encapsulado que no esté en ella, lleva el par de su hoja de datos.",
  ],
  "first.check": [
    "Check every plug, every screw and the earth once more; close all covers.",
    "Revise otra vez cada conector, cada tornillo y la tierra; cierre todas las tapas.",
  ],
  "first.stand": [
    "Stand clear and switch on at the breaker or isolator.",
    "Apártese y conecte en el interruptor o seccionador.",
  ],
  "first.watch": [
    "Watch and listen for a few minutes: it must run evenly, without smell, smoke or trip.",
    "Observe y escuche unos minutos: debe funcionar con regularidad, sin olor, humo ni disparos.",
  ],
  "first.trip": [
    "If a breaker, a residual-current breaker or a fuse opens, do not switch on again.",
    "Si salta un interruptor, un diferencial o un fusible, no vuelva a conectar.",
  ],
  "back.board": [
    "The whole board as it is, with its heatsink and all that is screwed to it; no fuse changed.",
    "La placa entera tal como está, con su disipador y todo lo atornillado a él; sin cambiar fusibles.",
  ],
  "back.motor": [
    "The motor's readings, unplugged and proven dead: U to V, V to W, W to U, and each to earth.",
    "Las lecturas del motor, desconectado y comprobado sin tensión: U-V, V-W, W-U y cada una a tierra.",
  ],
  "back.story": [
    "What it did, in order: sounds, smell, display or number of blinks, which fuse or breaker opened.",
    "Qué hizo, en orden: ruidos, olor, pantalla o número de parpadeos, qué fusible o interruptor saltó.",
  ],
  "back.wiring": [
    "Pictures of the wiring as it was connected.",
    "Fotos del cableado tal como estaba conectado.",
  ],
  "back.packed": [
    "Before packing: proven below 10 V, dry, and padded so that nothing bends.",
    "Antes de embalar: comprobada por debajo de 10 V, seca y acolchada para que nada se doble.",
  ],
} as const satisfies Translated<typeof ADVICE, "es">;
