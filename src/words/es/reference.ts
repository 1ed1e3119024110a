import type { reference as english } from "../en/reference";
import type { Words } from "../shape";

export const reference: Words<typeof english> = {
  notice:
    "Traducción que todavía no ha leído un profesional del riego de habla española. Los textos escriben los decimales con punto, como las fórmulas; los nombres de las funciones no cambian.",
  nav: {
    label: "Páginas",
    trial: "Hojas de prueba",
    functions: "Funciones",
    sources: "Fuentes (en inglés)",
    support: "Ayuda y privacidad",
  },
  list: {
    title: "Fieldsum: funciones",
    description: "Todas las funciones de celda, por familia y por lo que responden.",
    heading: (count) => `${count} funciones`,
    question: "¿Qué quiere saber?",
    placeholder: "¿cuánto tiempo riego en cada postura?",
    none: "Ninguna función responde a eso. Pruebe con menos palabras, o con una unidad como gpm.",
    found: (some, all) => `${some} de ${all} funciones`,
  },
  page: {
    caution: (title) => `Precaución: ${title}`,
    tryIt: "Pruébela",
    optional: "(opcional)",
    blank: "en blanco",
    arguments: "Argumentos",
    argument: "argumento",
    whatItIs: "qué es",
    mayBeBlank: "Puede quedar en blanco.",
    takesRange: "Acepta un rango.",
    oneOf: (choices) => `Uno de: ${choices}.`,
    method: "Método y límites",
    source: "Fuente:",
    checked: "Cómo se comprueba (en inglés)",
    errors: "Errores",
    family: "De la misma familia",
    result: "Resultado",
    notLoaded: "No se pudieron cargar las funciones, así que el ejemplo no calcula.",
    howToWrite:
      "Escriba un número, un texto entre comillas dobles, TRUE o FALSE, o filas entre llaves: {35,3.7;45,4.2}",
  },
};
