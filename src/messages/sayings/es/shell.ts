import type { Sayings } from "../../said.ts";

export const SHELL: Sayings = {
  Language: "Idioma",
  "Saved: attach it to the message.": "Guardada: adjúntela al mensaje.",
  "The bench computer does not answer: no picture.": "El ordenador del banco no responde: no hay foto.",
  "Share or save the picture": "Compartir o guardar la foto",
  "The meter is reading for the grid.": "El medidor está leyendo para la cuadrícula.",
  "about {0}": "unos {0}",
  "the same net at": "la misma red en",
};
