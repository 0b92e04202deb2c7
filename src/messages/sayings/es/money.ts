import type { Sayings } from "../../said.ts";

export const MONEY: Sayings = {
  "It runs: nothing more is expected but handing it back.": "Funciona: no se espera más que devolverla.",
  "Stop here. {0}": "Parar aquí. {0}",
  "More is still expected than it would earn: only what is cheap is worth trying, then stop.":
    "Aún se espera más gasto que ganancia: solo vale la pena probar lo barato, y parar.",
  "Go on while less than {0} is still expected; now it is {1}.":
    "Seguir mientras se espere menos de {0}; ahora es {1}.",
  "Work and parts stand at {0}, above the {1} that was accepted: ask the customer again, or bear the rest.":
    "Trabajo y piezas van por {0}, por encima de los {1} aceptados: volver a preguntar al cliente, o asumir el resto.",
  "It may come to {0}, above the {1} that was accepted: ask the customer again before more is fitted.":
    "Puede llegar a {0}, por encima de los {1} aceptados: volver a preguntar al cliente antes de montar más.",
  "diagnosis fee": "tarifa de diagnóstico",
  "as the terms have it": "según las condiciones",
  "the terms name none": "las condiciones no fijan ninguna",
  "{0} was pulled already and counts as pulled": "{0} ya era usada y cuenta como usada",
  "{0} was new and counts as pulled": "{0} era nueva y cuenta como usada",
  "{0} is programmed and sold by nobody: a donor for the next such board":
    "{0} está programado y nadie lo vende: donante para la próxima placa igual",
  carcass: "restos de la placa",
  "for its parts, where the customer leaves it": "por sus piezas, si el cliente la deja",
  "{0}; in exchange the board goes whole": "{0}; en el cambio la placa va entera",
  "exchange board": "placa de intercambio",
  "keeping the board fetches more": "quedarse la placa da más",
  "given for this board, whole and with its controller":
    "lo que dan por esta placa, entera y con su controlador",
  "{0}, good in {1} of {2}": "{0}, buena en {1} de {2}",
  "{0}, less {1} of taking it off": "{0}, menos {1} de quitarla",
  "{0}: it stays on": "{0}: se queda puesta",
  "a new board, and the diagnosis fee": "una placa nueva, y la tarifa de diagnóstico",
  "the board goes back as it is, for the diagnosis fee":
    "la placa vuelve como está, por la tarifa de diagnóstico",
  "the price that is agreed": "el precio acordado",
  "the least at which the job is expected to pay, what was spent on it included":
    "lo mínimo con que se espera que el trabajo compense, lo gastado incluido",
  "the shop's usual price": "el precio habitual del taller",
  "The board runs: what it took is spent.": "La placa funciona: lo que hizo falta ya está gastado.",
  "Going on is worth less than stopping.": "Seguir vale menos que parar.",
  "At the price agreed the job is not expected to leave the shop's minimum margin of {0}.":
    "Al precio acordado no se espera que el trabajo deje el margen mínimo del taller, {0}.",
  "The repair would cost more than half of a new board, and it may fail: most customers take the new one.":
    "La reparación costaría más de la mitad de una placa nueva, y puede fallar: la mayoría de los clientes eligen la nueva.",
  "Repaired in {0} of {1} such jobs.": "Reparada en {0} de {1} trabajos así.",
  "Work at the bench": "Trabajo en el banco",
  "Not charged": "No se cobra",
  "Diagnosis fee": "Tarifa de diagnóstico",
  "New board": "Placa nueva",
  "Not above what was agreed": "No más de lo acordado",
  "To the price agreed": "Hasta el precio acordado",
  "Comeback of the shop's own repair: nothing is charged.":
    "Vuelta de una reparación propia: no se cobra nada.",
  "A new board in the place of this one, as quoted, and the diagnosis fee.":
    "Una placa nueva en lugar de esta, según presupuesto, y la tarifa de diagnóstico.",
  "Not repaired: the diagnosis fee alone. Parts fitted go back to the shop.":
    "Sin reparar: solo la tarifa de diagnóstico. Las piezas montadas vuelven al taller.",
  "By work and parts: no price was agreed.": "Por trabajo y piezas: no se acordó precio.",
  "By work and parts, within what was agreed.": "Por trabajo y piezas, dentro de lo acordado.",
  "Not above what was agreed without asking again.": "No más de lo acordado sin volver a preguntar.",
  "The price agreed for the repaired board.": "El precio acordado por la placa reparada.",
  "The job is open; this is the bill if it were repaired as it stands. {0}":
    "El trabajo está abierto; esta es la factura si quedara reparada como está. {0}",
  "{0}, pulled": "{0}, pieza usada",
};
