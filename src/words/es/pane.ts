import type { pane as english } from "../en/pane";
import type { Words } from "../shape";

export const pane: Words<typeof english> = {
  notice: "Traducción que todavía no ha leído un profesional del riego de habla española.",
  language: "Idioma",
  title: "Fieldsum",
  tabs: {
    functions: "Funciones",
    sheets: "Hojas",
    own: "Nombres",
    check: "Revisar",
    picture: "Dibujo",
  },
  loading: "Cargando las funciones…",
  loadFailed:
    "No se pudieron cargar las funciones. Revise la conexión con el lugar donde está el complemento, luego cierre y abra este panel.",
  outside:
    "Este panel no está abierto en Excel, así que desde aquí no se puede poner nada en un libro. La ayuda y los ejemplos de las funciones sí trabajan.",
  lacks: (what) => `Este Excel es demasiado antiguo para: ${what.join("; ")}.`,
  lacking: {
    functions:
      "las funciones mismas (necesitan Microsoft 365, Excel en la web o una versión actual para Mac)",
    cells: "leer y escribir celdas desde este panel",
    validation: "listas y límites en las celdas de entrada de una hoja nueva",
    printing: "ajustes de impresión de una hoja nueva",
    spills: "seguir una tabla que llena una sola fórmula",
  },
  hostError: (message) => `Excel dice: ${message}`,
  errors: {
    cellEdit:
      "Todavía se está escribiendo en una celda. Presione Entrar o Escape ahí, y luego el botón otra vez.",
    protectedSheet:
      "La hoja está protegida. Elija Revisar, Desproteger hoja, o vaya a otra hoja, y pruebe otra vez.",
    accessDenied:
      "Excel no permite cambios aquí. ¿El libro es de solo lectura, está en Vista protegida o protegido? Elija Habilitar edición, o guarde una copia, y pruebe otra vez.",
    WorkbookProtected:
      "La estructura del libro está protegida, así que no se pueden agregar hojas. Elija Revisar, Proteger libro para quitarlo, o abra un libro nuevo.",
    SheetThere: "Acaba de agregarse una hoja con ese nombre. Presione el botón otra vez.",
    TooLarge: "Son más celdas de las que tiene una línea. Seleccione la tabla misma.",
  },
  search: {
    label: "Buscar funciones",
    placeholder: "Una palabra, una unidad o una tarea",
    count: (count) => (count === 1 ? "1 función" : `${count} funciones`),
    none: "Ninguna función corresponde. Pruebe otra palabra: fricción, presión, horas, vaciar.",
  },
  page: {
    back: "Todas las funciones",
    example: "Pruébela",
    exampleHint:
      'Escriba valores como en una fórmula: 50, "SI", {35,3.7;45,4.2}. En Excel también vale una celda o un nombre como B4.',
    leftOut: "omitido",
    result: "Resultado",
    cannotCompute: "Esto no se puede calcular aquí. Insértelo, y la hoja lo hará.",
    unknownReference: (text) => `${text} no es ni una celda ni un nombre de esta hoja.`,
    insert: "Insertar en la celda seleccionada",
    arguments: "Argumentos",
    optional: "opcional",
    required: "obligatorio",
    gives: "Da",
    how: "Cómo se calcula",
    source: "Fuente",
    errors: "Errores",
    cautions: "Antes de trabajar con esto",
    choices: "Opciones",
  },
  insert: {
    filled: (cell, content) => `${cell} ya tiene ${content}. ¿Reemplazarlo?`,
    replace: "Reemplazar",
    keep: "Dejar lo que está",
    done: (cell) => `Puesto en ${cell}.`,
    spills:
      "Llena celdas hacia abajo y a la derecha. Excel muestra ahí #¡DESBORDAMIENTO! en vez de borrar algo.",
    undo: "Deshacer",
    undone: (cell) => `${cell} está como estaba.`,
    changedSince: (cell) => `${cell} ha cambiado desde entonces, así que se dejó como está.`,
  },
  sheets: {
    intro: "Cada una se vuelve hojas nuevas en este libro. Nada de lo que hay se cambia.",
    system: "Unidades de la hoja",
    us: "Unidades US (ft, psi, gpm)",
    si: "Unidades métricas",
    add: "Agregar a este libro",
    added: (names) => `Agregadas: ${names.join(", ")}.`,
    parts: {
      charts: "gráficos",
      checks: "colores de las comprobaciones",
      limits: "listas y límites",
      printing: "ajustes de impresión",
      frozenRows: "filas inmovilizadas",
    },
    refusedParts: (parts) =>
      `Los números están todos, pero este Excel no aceptó: ${parts.join("; ")}.`,
    refused: (names) =>
      `Este Excel no aceptó estos nombres de funciones, y la hoja de nombres muestra #¿NOMBRE? en su lugar: ${names.join(", ")}.`,
  },
  own: {
    intro:
      "Fije una vez algunos argumentos de una función y dé al resto un nombre corto propio. El nombre se guarda en este libro.",
    untried: "Los nombres hechos con LAMBDA necesitan un Excel actual de Microsoft 365.",
    oldBuild: (build) =>
      `Esta compilación de Excel (${build}) es anterior a las que se sabe que aceptan las funciones dentro de LAMBDA. Puede rechazar el nombre.`,
    noLambda:
      "Este Excel no tiene LAMBDA, así que no puede tener nombres de funciones propios. El nombre no se guardó.",
    list: "Nombres en este libro",
    empty: "Ninguno todavía.",
    choose: "Función",
    fix: "Argumentos que se fijan",
    fixHint: "Deje vacío lo que quiere dar cada vez. El texto va entre comillas.",
    name: "Nombre",
    description: "Descripción",
    formula: "Fórmula del nombre",
    use: "Uso",
    save: "Guardar el nombre",
    change: "Cambiar",
    remove: "Borrar",
    cancel: "Cancelar",
    removeSure: (name) => `¿Borrar ${name}? Las celdas que lo usan mostrarán #¿NOMBRE?.`,
    stored: (name) => `${name} está guardado.`,
    removed: (name) => `${name} está borrado.`,
    allFixed: "Deje abierto al menos un argumento.",
    badFixed: (argument) =>
      `${argument}: esto no es ni un número, ni un texto entre comillas, ni una celda.`,
    faults: {
      empty: "Póngale un nombre.",
      "too long": "Un nombre tiene como máximo 255 caracteres.",
      "first character": "Un nombre empieza con una letra, un guion bajo o una barra inversa.",
      characters: "Un nombre solo tiene letras, dígitos, puntos y guiones bajos, sin espacios.",
      "cell address": "Esto se lee como la dirección de una celda. Elija otro nombre.",
      "true or false": "TRUE y FALSE no pueden ser nombres.",
      taken: "El libro ya tiene este nombre.",
      namespace: "Los nombres con el prefijo propio del complemento son sus funciones.",
    },
  },
  check: {
    run: "Revisar esta hoja",
    intro:
      "Halla las celdas de la hoja activa que usan las funciones, y lista las que tienen un error o una comprobación que no da OK.",
    none: (sheet) => `Ninguna celda de ${sheet} usa las funciones.`,
    clean: (sheet, count) =>
      `${sheet}: ${count === 1 ? "1 celda usa" : `${count} celdas usan`} las funciones. Sin errores, y toda comprobación da OK.`,
    found: (sheet, using, errors, warnings) =>
      `${sheet}: ${using} usan las funciones, ${errors} con un error, ${warnings} con una comprobación que no da OK.`,
    errors: "Errores",
    warnings: "Comprobaciones que no dan OK",
    goTo: (address) => `Ir a ${address}`,
    ownMark: "Su mensaje está en la marca de error de la propia celda.",
    differs: "Calculada otra vez con sus argumentos no da error: recalcule la hoja.",
    spill: "Hay algo donde iría su tabla. Vacíe esas celdas.",
    name: "Excel todavía no conoce aquí la función. Ingrese otra vez estas celdas con el botón de arriba; si no ayuda, elija Inicio, Complementos, Fieldsum, y pruebe una vez más.",
    reenter: (count) =>
      count === 1 ? "Ingresar otra vez esta celda" : `Ingresar otra vez estas ${count} celdas`,
    reentered: (count) =>
      count === 1 ? "Se ingresó otra vez 1 celda." : `Se ingresaron otra vez ${count} celdas.`,
    stillUnknown: (count) =>
      `${count === 1 ? "1 celda todavía muestra" : `${count} celdas todavía muestran`} #¿NOMBRE?. Elija Inicio, Complementos, Fieldsum, y pruebe una vez más.`,
  },
  picture: {
    intro: "Seleccione la tabla que llena LATERAL.PROFILE, o una celda de ella.",
    draw: "Dibujar la línea seleccionada",
    notProfile: "Lo seleccionado no es una tabla de LATERAL.PROFILE: falta su fila de encabezados.",
    noHeads: "La tabla no tiene aspersores.",
    copy: "Copiar como imagen",
    copied: "El dibujo está en el portapapeles.",
    copyFailed: "No se pudo copiar el dibujo. Puede que Excel no lo permita aquí.",
    pressure: "Presión a lo largo de la línea",
    flow: "Caudal a lo largo de la línea",
    ground: "Terreno",
    distance: "distancia",
    pressureAxis: "presión",
    flowAxis: "caudal",
    linePressure: "presión en la línea",
    atNozzle: "en la boquilla",
    inTubing: "en la tubería",
    ofHead: "de cada aspersor",
    head: "aspersor",
    line: "línea",
    nozzle: "boquilla",
    table: "Los números",
    describe: (heads, lowest, where, highest) =>
      `${heads} aspersores; presión de boquilla desde ${lowest} en el aspersor ${where} hasta ${highest}.`,
  },
};
