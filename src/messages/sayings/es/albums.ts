import type { Sayings } from "../../said.ts";

export const ALBUMS: Sayings = {
  "Revision on the board: {0}": "Revisión de la placa: {0}",
  "Photos and pins": "Fotos y marcas",
  "photos {0}, pins {1}": "fotos {0}, marcas {1}",
  "Pinned on two screens": "Marcado en dos dispositivos",
  "{0} was pinned differently on two screens, {1}. Both are kept until you say which holds.":
    "{0} se marcó de forma distinta en dos dispositivos, {1}. Se conservan las dos hasta que diga cuál vale.",
  "{0}: not pinned at all": "{0}: sin marcar",
  "{0} holds: {1}": "Vale la {0}: {1}",
  "Both hold: it has several pads": "Valen las dos: tiene varios puntos de soldadura",
  "Both ways in which {0} was pinned": "Las dos formas en que se marcó {0}",
  "Two screens changed the photo of the {0}. Only one can hold, with the places pinned on it; the other is kept until you say which.":
    "Dos dispositivos cambiaron la foto del {0}. Solo puede valer una, con los lugares marcados en ella; la otra se conserva hasta que diga cuál.",
  "Photo {0}": "Foto {0}",
  "{0} holds: places pinned {1}": "Vale la {0}: lugares marcados {1}",
  "no photo": "sin foto",
  "Photo, {0}: arrow keys move the cross, with Shift in longer steps; Enter pins {1}":
    "Foto, {0}: las flechas mueven la cruz, con Mayús en pasos más largos; Intro marca {1}",
  "The cross: {0}, {1} % from the left, {2} % from the top.":
    "La cruz: {0}, a {1} % de la izquierda, a {2} % de arriba.",
  "pinned on {0}, this board is {1}": "marcado en {0}, esta placa es {1}",
  "Photo of a board marked {0}.": "Foto de una placa con la marca {0}.",
  "The photo is of {0}, this board is {1}: parts may lie elsewhere.":
    "La foto es de {0}, esta placa es {1}: las piezas pueden estar en otro sitio.",
  "Revision printed on the photo’s board, {0}": "Revisión impresa en la placa de la foto, {0}",
  "Revision printed on this board": "Revisión impresa en esta placa",
};
