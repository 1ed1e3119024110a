import type { Texts } from "../translate";
import type { Messages } from "./messages";

/**
 * What the trial page and the pictures say, by the English that stands where it is drawn. The pane
 * and the static pages have words of their own.
 */
export const screens: Texts = {
  "Skip to the content": "Saltar al contenido",
  "Parts of this page": "Partes de esta página",
  Sheet: "Hoja",
  "Catch cans": "Pluviómetros",
  Functions: "Funciones",
  Language: "Idioma",
  "There is a newer version of this page.": "Hay una versión más nueva de esta página.",
  "Load it": "Cargarla",
  Later: "Más tarde",
  "The sheet is being read…": "Se está leyendo la hoja…",
  Spreadsheet: "Hoja de cálculo",
  "The spreadsheet is loading. What stands beside it works already.":
    "La hoja de cálculo se está cargando. Lo que está al lado ya trabaja.",
  "The functions are a script, so this page needs JavaScript. Nothing leaves your browser.":
    "Las funciones son un script, así que esta página necesita JavaScript. Nada sale de su navegador.",
  "Everything is computed in this browser; nothing that you type leaves it. Bluestem Flat is an invented field.":
    "Todo se calcula en este navegador; nada de lo que escribe sale de él. Bluestem Flat es un campo inventado.",
  "Fieldsum: try the functions": "Fieldsum: pruebe las funciones",
  "Fieldsum: catch cans": "Fieldsum: pluviómetros",
  "Pages of the sheet": "Páginas de la hoja",
  Units: "Unidades",
  Answers: "Respuestas",
  "What to show": "Qué mostrar",
  "The other workbooks could not be fetched. With a network, try again.":
    "No se pudieron traer los demás libros. Inténtelo de nuevo cuando haya red.",
  "The spreadsheet could not be started in this browser. The form and the tables work without it.":
    "La hoja de cálculo no pudo arrancar en este navegador. El formulario y las tablas trabajan sin ella.",
  "The page could not be started. ": "La página no pudo arrancar. ",
  "The piece of work that this address names is not in this browser. This is the sample.":
    "El trabajo que nombra esta dirección no está en este navegador. Esta es la muestra.",
  "This one": "Este",
  "What you can change": "Lo que puede cambiar",
  Results: "Resultados",
  Table: "Tabla",
  "Safety: read before field work": "Seguridad: léala antes del trabajo en el campo",
  "To change them, choose other units at the top: there you say whether the plan is to be converted.":
    "Para cambiarlas, elija otras unidades arriba: allí dice si el plan se debe convertir.",
  "The units are chosen at the top of the page: there you say whether the plan is to be converted. A change in the cell would call 40 ft 40 m.":
    "Las unidades se eligen arriba en la página: allí dice si el plan se debe convertir. Un cambio en la celda llamaría 40 m a 40 ft.",
  "The cells of a ready-made page stay where they are, and so does its name: the answers read them there. Add a page of your own for more.":
    "Las celdas de una página preparada se quedan donde están, y también su nombre: las respuestas las leen ahí. Agregue una página propia para más.",
  "Address of the cell": "Dirección de la celda",
  "Add a page": "Agregar una página",
  "All pages": "Todas las páginas",
  Close: "Cerrar",
  "Search by name or by what you want to know": "Busque por nombre o por lo que quiere saber",
  Gives: "Da",
  Method: "Método",
  Source: "Fuente",
  Errors: "Errores",
  "For instance ": "Por ejemplo ",
  " optional": " opcional",
  Undo: "Deshacer",
  Redo: "Rehacer",
  Work: "Trabajo",
  "Piece of work": "Trabajo guardado",
  "Other workbooks": "Otros libros",
  "The sample. What you change becomes a piece of work of your own, kept in this browser.":
    "La muestra. Lo que usted cambia se vuelve un trabajo propio, guardado en este navegador.",
  "Rename…": "Cambiar el nombre…",
  "Make a copy": "Hacer una copia",
  "Start blank": "Empezar en blanco",
  "Back to the sample": "Volver a la muestra",
  "Delete…": "Borrar…",
  "Name of this piece of work": "Nombre de este trabajo",
  Name: "Nombre",
  Rename: "Cambiar el nombre",
  "Leave it": "Dejarlo",
  "A blank workbook of your own: figures and texts are empty; choices from lists, the friction coefficient, the efficiency and the limits of the design stand as in the sample.":
    "Un libro propio en blanco: números y textos están vacíos; las opciones de listas, el coeficiente de fricción, la eficiencia y los límites del diseño quedan como en la muestra.",
  "It is removed from this browser for good. A file or a link that you saved stays.":
    "Se quita de este navegador para siempre. Un archivo o un enlace que usted guardó queda.",
  "Delete it": "Borrarlo",
  "Keep it": "Conservarlo",
  "This browser keeps nothing for this page.": "Este navegador no guarda nada para esta página.",
  "This browser's storage for this page is full or shut.":
    "El espacio de este navegador para esta página está lleno o cerrado.",
  "In the spreadsheet, Tab goes to the next cell. Esc and then Tab leaves it.":
    "En la hoja de cálculo, Tab va a la celda siguiente. Esc y luego Tab sale de ella.",
  "Cells of the page": "Celdas de la página",
  "All cells of this page as a table": "Todas las celdas de esta página como tabla",
  "Choose a cell to read it here.": "Elija una celda para leerla aquí.",
  "No cell of this page shows an error.": "Ninguna celda de esta página muestra un error.",
  "One cell shows an error": "Una celda muestra un error",
  "What is wrong, the cause first": "Qué está mal, la causa primero",
  "Go there": "Ir allí",
  "And one more.": "Y una más.",
  "One result follows from it": "Un resultado sale de ella",
  "Type into a cell": "Escribir en una celda",
  Cell: "Celda",
  "Value or formula": "Valor o fórmula",
  Enter: "Ingresar",
  Workshop: "Taller",
  "Fieldsum: workshop": "Fieldsum: taller",
  "Parts of the workshop": "Partes del taller",
  "The workshop is being read…": "Se está leyendo el taller…",
  "The functions are a script, so this page needs JavaScript.":
    "Las funciones son un script, así que esta página necesita JavaScript.",
  // Files and links.
  "Use this plan in…": "Usar este plan en…",
  "Save as .xlsx": "Guardar como .xlsx",
  "Save a copy with values only": "Guardar una copia solo con valores",
  "Open .xlsx…": "Abrir .xlsx…",
  "Copy link": "Copiar el enlace",
  "Ready-made workbooks…": "Libros preparados…",
  "Ready-made workbooks": "Libros preparados",
  Print: "Imprimir",
  "Carrying the plan over": "Llevar el plan",
  "Every input that both workbooks have holds the same there: the line, its tubing, chart, main and pump, the field and the day. The rest of the other workbook stays as it is.":
    "Cada entrada que tienen ambos libros queda igual allá: la línea, su tubería, tabla, principal y bomba, el campo y el día. El resto del otro libro queda como está.",
  "the sample": "la muestra",
  "Saving the file": "Guardar el archivo",
  "The file is being written…": "Se está escribiendo el archivo…",
  "Opening the file": "Abrir el archivo",
  "Making the link": "Hacer el enlace",
  "Too much for a link": "Demasiado para un enlace",
  "So many cells were changed that an address cannot carry them. Save as .xlsx and send the file.":
    "Se cambiaron tantas celdas que una dirección no las puede llevar. Guarde como .xlsx y envíe el archivo.",
  " Pages of your own and looks of cells are not in it: for those, save as .xlsx.":
    " Las páginas propias y el aspecto de las celdas no van en él: para eso, guarde como .xlsx.",
  "The link": "El enlace",
  Address: "Dirección",
  "The sample as files. With formulas they need the add-in in Excel; with values only they open anywhere.":
    "La muestra como archivos. Con fórmulas necesitan el complemento en Excel; solo con valores se abren en cualquier parte.",
  "The file is damaged: it cannot be read as a workbook.":
    "El archivo está dañado: no se puede leer como libro.",
  "The file is damaged: it cannot be unpacked.":
    "El archivo está dañado: no se puede desempaquetar.",
  "The file holds more cells than a workbook of these pages.":
    "El archivo tiene más celdas que un libro de estas páginas.",
  "There are no ready-made workbooks.": "No hay libros listos.",
  "It is none of the ready-made workbooks: their pages are not in it, or have other names.":
    "No es ninguno de los libros preparados: no tiene sus páginas, o tienen otros nombres.",
  "It is a copy with values only: what was worked out stands in it without its formulas. Open the workbook it was made from.":
    "Es una copia solo con valores: lo calculado está en ella sin sus fórmulas. Abra el libro del que se hizo.",
  "Its units are unknown.": "No se conocen sus unidades.",
  "The file is larger than 8 MB; a workbook of these pages is far smaller.":
    "El archivo pasa de 8 MB; un libro de estas páginas es mucho menor.",
  "The file is no .xlsx workbook. One that is protected by a password is not opened either.":
    "El archivo no es un libro .xlsx. Uno protegido con contraseña tampoco se abre.",
  "The file unpacks to far more than a workbook of these pages.":
    "El archivo se desempaqueta en mucho más que un libro de estas páginas.",
  "The file holds macros; it is not opened.": "El archivo tiene macros; no se abre.",
  "The file defines entities, which no workbook does; it is not opened.":
    "El archivo define entidades, lo que ningún libro hace; no se abre.",
  "The file holds no workbook.": "El archivo no tiene un libro.",
  "The spreadsheet behind this page has not started.":
    "La hoja de cálculo detrás de esta página no ha arrancado.",
  "The link is damaged or was cut on its way: it cannot be read. This is the sample.":
    "El enlace está dañado o se cortó en el camino: no se puede leer. Esta es la muestra.",
  "From a link, and not kept yet: what you change, or copy, becomes a piece of work of your own.":
    "De un enlace, y todavía no guardado: lo que cambie, o copie, se vuelve un trabajo propio.",
  // The catch cans.
  "Poured out, in mL": "Vaciado, en mL",
  "With a ruler, straight-sided cans": "Con regla, recipientes de lados rectos",
  "How they were measured": "Cómo se midieron",
  "A can that was knocked over: leave it blank. Numbers copied from a sheet can be pasted into the first can.":
    "Un pluviómetro volcado: déjelo en blanco. Los números copiados de una hoja se pueden pegar en el primero.",
  "No can holds a catch.": "Ningún pluviómetro tiene agua.",
  "Depth in the line of cans": "Lámina en la línea de pluviómetros",
  Depth: "Lámina",
  "left out": "omitido",
  "▽ driest quarter, ▲ wettest quarter, ◎ sprinkler":
    "▽ cuarto más seco, ▲ cuarto más mojado, ◎ aspersor",
  "A leg of cans out from one sprinkler": "Una fila de pluviómetros desde un aspersor",
  "The first can stands at the sprinkler, the others one step further each, out to a dry one. The overlap of all sprinklers around is computed from it.":
    "El primer pluviómetro está en el aspersor, los demás a un paso más cada uno, hasta uno seco. De ahí se calcula el traslape de todos los aspersores alrededor.",
  "A row of cans across one line": "Una fila de pluviómetros a través de una línea",
  "An odd number of cans, the middle one at the line. The line is laid over itself at every move.":
    "Un número impar de pluviómetros, el del medio en la línea. La línea se suma sobre sí misma en cada paso.",
  "A block of cans among running sprinklers":
    "Un bloque de pluviómetros entre aspersores en marcha",
  "Cans on a regular grid where everything runs as it will: what they caught is the pattern.":
    "Pluviómetros en una cuadrícula donde todo riega como va a regar: lo que recogieron es el patrón.",
  "What the catch cans say": "Lo que dicen los pluviómetros",
  "Set out cans of one size, run for a known time, measure what each caught, and type it here. The numbers to begin with are invented.":
    "Ponga recipientes de un mismo tamaño, riegue un tiempo conocido, mida lo que recogió cada uno, y escríbalo aquí. Los números del comienzo son inventados.",
  "How the cans stood": "Cómo estaban los pluviómetros",
  "Opening of a can, across": "Boca de un pluviómetro, de lado a lado",
  "Time of the test": "Duración de la prueba",
  "From can to can": "De pluviómetro a pluviómetro",
  "From head to head": "De aspersor a aspersor",
  "From position to position": "De posición a posición",
  "Net depth wanted": "Lámina neta deseada",
  "The test": "La prueba",
  "Caught, mL": "Recogido, mL",
  "Two cans more": "Dos pluviómetros más",
  "A column more": "Una columna más",
  "One can more": "Un pluviómetro más",
  "Two cans fewer": "Dos pluviómetros menos",
  "A column fewer": "Una columna menos",
  "One can fewer": "Un pluviómetro menos",
  "A row more": "Una fila más",
  "A row fewer": "Una fila menos",
  "Numbers copied from a sheet can be pasted into the first can.":
    "Los números copiados de una hoja se pueden pegar en el primer pluviómetro.",
  "What it means for the hours": "Lo que significa para las horas",
  "The time of the test must be above 0 hours.":
    "La duración de la prueba debe ser mayor que 0 horas.",
  "By what reached the cans: what evaporated or drifted off on the way is already gone from it.":
    "Según lo que llegó a los pluviómetros: lo que se evaporó o se llevó el viento ya no está.",
  "The pattern": "El patrón",
  "Christiansen uniformity, CU": "Uniformidad de Christiansen, CU",
  "Distribution uniformity of the low quarter, DU":
    "Uniformidad de distribución del cuarto más bajo, DU",
  "Average depth in the test": "Lámina media en la prueba",
  "Average rate": "Intensidad media",
  "The driest quarter gets nothing: no time makes up for it.":
    "El cuarto más seco no recibe nada: ningún tiempo lo compensa.",
  "Depth in each can": "Lámina en cada pluviómetro",
  "The same in your own sheet": "Lo mismo en su propia hoja",
  "driest quarter": "cuarto más seco",
  sprinkler: "aspersor",
  line: "línea",
  "computing…": "calculando…",
  "values only": "solo valores",
  Copy: "Copiar",
  Insert: "Insertar",
  "Copied.": "Copiado.",
  "Its page, with a live example": "Su página, con un ejemplo vivo",
  "What it is held against": "Con qué se comprueba",
  "No function is found by these words. Try a unit, or what you want to know.":
    "Ninguna función se encuentra con estas palabras. Pruebe con una unidad, o con lo que quiere saber.",
  "The browser does not let the page copy; mark the formula and copy it.":
    "El navegador no deja copiar a la página; marque la fórmula y cópiela.",
  "Open the spreadsheet and choose a cell in it first.":
    "Abra primero la hoja de cálculo y elija una celda.",
  "Put it there": "Ponerla ahí",
  "Leave the cell": "Dejar la celda",
  "One piece of work here": "Un trabajo de aquí",
  "The pages are not kept for later:": "Las páginas no se guardan para después:",
  "Save flags": "Guardar las banderas",
  "There are no flags to save.": "No hay banderas que guardar.",
  "wettest quarter": "cuarto más mojado",
  "Map of depths": "Mapa de láminas",
  "Of the average depth:": "De la lámina media:",
  "▽ driest quarter, ▲ wettest quarter": "▽ cuarto más seco, ▲ cuarto más mojado",
  hours: "horas",
  // Pictures and errors.
  "Nothing to draw: mend the cells with errors first.":
    "Nada que dibujar: corrija primero las celdas con errores.",
  "the formula has a name that is no function and no named cell":
    "la fórmula tiene un nombre que no es ni función ni celda con nombre",
  "the formula divides by 0 or by a blank cell":
    "la fórmula divide entre 0 o entre una celda en blanco",
  "the formula refers to a cell that is gone": "la fórmula se refiere a una celda que ya no está",
  "the result needs more cells than are free: clear the cells below and to the right":
    "el resultado necesita más celdas libres: vacíe las de abajo y a la derecha",
  "the formula gives a number that does not exist or is too large":
    "la fórmula da un número que no existe o es demasiado grande",
  "a value that the formula looks for is not there": "un valor que busca la fórmula no está",
  "the formula gets text or an error where a number is due":
    "la fórmula recibe texto o un error donde corresponde un número",
  "the formula comes back to its own cell": "la fórmula vuelve a su propia celda",
  "the formula asks for the cells that two ranges share, and they share none":
    "la fórmula pide las celdas que comparten dos rangos, y no comparten ninguna",
  "the formula cannot be computed": "la fórmula no se puede calcular",
  "the formula has an error": "la fórmula tiene un error",
  none: "ninguno",
  // The drawing of a plan.
  "Corners and obstacles, to be moved": "Esquinas y obstáculos, para mover",
  "Lines bear (degrees from north)": "Rumbo de las líneas (grados desde el norte)",
  Field: "Campo",
  "Add an obstacle": "Agregar un obstáculo",
  "Add a corner after it": "Agregar una esquina después",
  "Remove this corner": "Quitar esta esquina",
  "Remove this obstacle": "Quitar este obstáculo",
  east: "al este",
  west: "al oeste",
  north: "al norte",
  south: "al sur",
  "Drag a corner or an obstacle, or choose it and press the arrow keys: with Shift ten times as far, Escape takes it back. The tables of the page Field say the same.":
    "Arrastre una esquina o un obstáculo, o elíjalo y use las flechas: con Mayús avanza diez veces más, Escape lo devuelve. Las tablas de la página Campo dicen lo mismo.",
  Latitude: "Latitud",
  Longitude: "Longitud",
  "The lines are not drawn:": "Las líneas no se dibujan:",
  "Turn the rectangle into corners?": "¿Convertir el rectángulo en esquinas?",
  "Turn it into corners": "Convertirlo en esquinas",
  "Leave the rectangle": "Dejar el rectángulo",
  "Added. Corners are counted anew from here on.":
    "Agregada. Desde aquí las esquinas se cuentan de nuevo.",
  "Removed. Undo brings the corner back.": "Quitada. Deshacer la trae de vuelta.",
  "Removed. Undo brings the obstacle back.": "Quitado. Deshacer lo trae de vuelta.",
  "Three corners are the fewest that bound a field.": "Un campo tiene por lo menos tres esquinas.",
  "The table of obstacles is full: remove one first.":
    "La tabla de obstáculos está llena: quite uno primero.",
  "Added in the middle of the field: move it to its place and type its radius.":
    "Agregado en el medio del campo: muévalo a su lugar y escriba su radio.",
};

/** Texts with places; one whose name begins with "own" is the user's, and stays. */
export const screenForms: Messages = {
  "Saved as flags.{ending}. A plan is no survey: have buried lines located before you drive a stake.":
    "Guardado como flags.{ending}. Un plan no es un levantamiento: haga localizar las líneas enterradas antes de clavar una estaca.",
  "{n} of {m} functions, the best match first": "{n} de {m} funciones, la mejor primero",
  'a number is due where "{own}" stands': 'corresponde un número donde está "{own}"',
  "{n} functions": "{n} funciones",
  "Put it into {cell}?": "¿Ponerla en {cell}?",
  '{cell} of page {ownPage} holds "{own}".': '{cell} de la hoja {ownPage} contiene "{own}".',
  "Stands in {cell} of page {own} now.": "Ahora está en {cell} de la hoja {own}.",
  "{own} (this window)": "{own} (esta ventana)",
  "{own}, copy": "{own}, copia",
  " It was made with an earlier edition of the workbook; these had no place in this one: {list}.":
    " Se hizo con una edición anterior del libro; esto no tuvo lugar en esta: {list}.",
  " {what} cannot be read by this edition of the page; nothing of it was removed.":
    " {what}: esta edición de la página no lo puede leer; no se quitó nada.",
  "{n} pieces of work here": "{n} trabajos de aquí",
  "{n} of {m} functions": "{n} de {m} funciones",
  " Choices: {list}.": " Opciones: {list}.",
  "From {a} to {b} units": "De unidades {a} a unidades {b}",
  '"Convert" makes a new piece of work: the same plan with every length, pressure, flow, price per length and the like in {system} units. "{own}" stays as it is.':
    '«Convertir» hace un trabajo nuevo: el mismo plan con cada largo, presión, caudal, precio por largo y demás en unidades {system}. "{own}" queda como está.',
  "Not converted, because what their numbers mean is not known: {list}.":
    "No se convierten, porque no se sabe qué significan sus números: {list}.",
  "Convert to {system}": "Convertir a {system}",
  "Open the {system} sample": "Abrir la muestra {system}",
  "Stay in {system}": "Quedarse en {system}",
  "Sample: Bluestem Flat ({system})": "Muestra: Bluestem Flat ({system})",
  "My {own}": "Mi trabajo: {own}",
  'Kept in this browser as "{own}".': 'Guardado en este navegador como "{own}".',
  "Not kept: {why} Save it as a file.": "No guardado: {why} Guárdelo como archivo.",
  'The sample. "{own}" stays in this browser, in the list above.':
    'La muestra. "{own}" queda en este navegador, en la lista de arriba.',
  'Delete "{own}"?': '¿Borrar "{own}"?',
  "{state} It was made with an earlier edition of the workbook; these had no place in this one: {list}.":
    "{state} Se hizo con una edición anterior del libro; esto no tuvo lugar en esta: {list}.",
  "And {n} more.": "Y {n} más.",
  "{n} results follow from it": "{n} resultados salen de ella",
  "follows from {place}": "sale de {place}",
  "{n} cells show an error": "{n} celdas muestran un error",
  "Go to {cell}": "Ir a {cell}",
  '"{own}" is no cell: type a column letter and a row number, as in B4':
    '"{own}" no es una celda: escriba la letra de la columna y el número de la fila, como B4',
  '"{own}" can be read in two ways: type {a} or {b}.':
    '"{own}" se puede leer de dos maneras: escriba {a} o {b}.',
  '"{own}" is not read as a number: type its digits with a point before the decimals and no other mark, as in 1234.5.':
    '"{own}" no se lee como número: escriba sus dígitos con un punto antes de los decimales y ninguna otra marca, como en 1234.5.',
  "{title}: a new piece of work": "{title}: un trabajo nuevo",
  '{title}: bring "{own}" up to this plan': '{title}: poner "{own}" al día con este plan',
  'The plan of "{own}" stands here now.': 'El plan de "{own}" está aquí ahora.',
  "The plan stands here now, without what was in error there: {own}.":
    "El plan está aquí ahora, sin lo que allá tenía error: {own}.",
  "{what} did not work": "{what}: no se pudo",
  "Saved as {own}: numbers and words without formulas, for anyone. It cannot be opened here again.":
    "Guardado como {own}: números y palabras sin fórmulas, para cualquiera. No se puede abrir aquí otra vez.",
  "Saved as {own}. It opens here again, and in Excel with the add-in.":
    "Guardado como {own}. Se abre aquí otra vez, y en Excel con el complemento.",
  'Opened {ownFile} as a piece of work of its own, "{own}". Looks of cells are those of the ready-made workbook.':
    'Se abrió {ownFile} como trabajo propio, "{own}". El aspecto de las celdas es el del libro preparado.',
  "{own} is not opened": "{own} no se abre",
  "The link is copied. It holds what you changed, in the address itself; nobody has it until you pass it on.{more}":
    "El enlace está copiado. Lleva lo que usted cambió, en la dirección misma; nadie lo tiene hasta que lo pase.{more}",
  "The link is copied. It holds what you changed, in the address itself; nobody has it until you pass it on.":
    "El enlace está copiado. Lleva lo que usted cambió, en la dirección misma; nadie lo tiene hasta que lo pase.",
  "Copy it from here. It holds what you changed, in the address itself; nobody has it until you pass it on.{more}":
    "Cópielo de aquí. Lleva lo que usted cambió, en la dirección misma; nadie lo tiene hasta que lo pase.{more}",
  "Copy it from here. It holds what you changed, in the address itself; nobody has it until you pass it on.":
    "Cópielo de aquí. Lleva lo que usted cambió, en la dirección misma; nadie lo tiene hasta que lo pase.",
  "{system}, values only": "{system}, solo valores",
  'Its units are unknown: "US" or "SI" is due in cell {cell} of page {page}.':
    'No se conocen sus unidades: corresponde "US" o "SI" en la celda {cell} de la página {page}.',
  "It was made with another edition of the workbook: {name} stands elsewhere in it. Nothing of it was read.":
    "Se hizo con otra edición del libro: {name} está en otro lugar. No se leyó nada de él.",
  "From a link ({system})": "De un enlace ({system})",
  "row {n}, column {m}": "fila {n}, columna {m}",
  "Caught, {unit}": "Recogido, {unit}",
  "Left out: the can at {place} is blank.{more}":
    "Omitido: el pluviómetro en {place} está en blanco.{more}",
  "Left out: the can at {place} is blank.": "Omitido: el pluviómetro en {place} está en blanco.",
  " Its place takes the middle of its neighbors.": " Su lugar toma el medio de sus vecinos.",
  "its depth must be a number, 0 or more; got {own}":
    "su lámina debe ser un número, 0 o más; recibió {own}",
  "The can at {place} is missing, and so is a neighbor: type what it caught, or leave out the end of the row.":
    "Falta el pluviómetro en {place}, y también un vecino: escriba lo que recogió, o deje fuera el final de la fila.",
  "Left out: the can at {place}: {what}. Its place takes the middle of its neighbors.":
    "Omitido: el pluviómetro en {place}: {what}. Su lugar toma el medio de sus vecinos.",
  "Left out: the can at {place}: {what}.": "Omitido: el pluviómetro en {place}: {what}.",
  "From the line ({unit})": "Desde la línea ({unit})",
  "From the sprinkler ({unit})": "Desde el aspersor ({unit})",
  "Depth ({unit})": "Lámina ({unit})",
  "Can at {place}, {unit}": "Pluviómetro en {place}, {unit}",
  "column {n}": "columna {n}",
  "Can in row {n}, {column}": "Pluviómetro en la fila {n}, {column}",
  "Can at {place}": "Pluviómetro en {place}",
  "{name}, mL": "{name}, mL",
  "Run {n} hours and the ground gets {a} on average; the driest quarter then has {b}.":
    "Riegue {n} horas y el suelo recibe {a} en promedio; el cuarto más seco tiene entonces {b}.",
  "Run {n} hours and the driest quarter gets {a}; the average is then {b}.":
    "Riegue {n} horas y el cuarto más seco recibe {a}; el promedio es entonces {b}.",
  "Depths in the cans ({unit}), as they stood":
    "Láminas en los pluviómetros ({unit}), como estaban",
  "Depths ({a}) at distances ({b}) from one position of the line to the next":
    "Láminas ({a}) a distancias ({b}) de una posición de la línea a la siguiente",
  "Depths ({a}) between four sprinklers, which stand at the corners. Across: {b} along the line. Down: {b2} from one position to the next":
    "Láminas ({a}) entre cuatro aspersores, que están en las esquinas. De lado a lado: {b} a lo largo de la línea. Hacia abajo: {b2} de una posición a la siguiente",
  "under {p}": "menos de {p}",
  "over {p}": "más de {p}",
  "{a}% to {b}%": "{a}% a {b}%",
  "{id} gave no number.": "{id} no dio un número.",
  "{stretch} inside": "{stretch} interior",
  "{name} comes from a cell that shows {code}: fix that one first":
    "{name} viene de una celda que muestra {code}: corrija primero esa",
  "Corner {n}, {x} {ux} {dx}, {y} {uy} {dy}": "Esquina {n}, {x} {ux} {dx}, {y} {uy} {dy}",
  "Obstacle {n}, {x} {ux} {dx}, {y} {uy} {dy}": "Obstáculo {n}, {x} {ux} {dx}, {y} {uy} {dy}",
  "Corner {n}": "Esquina {n}",
  "Obstacle {n}": "Obstáculo {n}",
  "East ({unit})": "Este ({unit})",
  "North ({unit})": "Norte ({unit})",
  "Radius ({unit})": "Radio ({unit})",
  "{place}: the plan follows. Undo takes it back.":
    "{place}: el plan lo sigue. Deshacer lo devuelve.",
  "The table holds {n} corners: remove one first.":
    "La tabla tiene lugar para {n} esquinas: quite una primero.",
  "The field is a rectangle of {a} by {b} {unit}. With a corner moved it becomes a field of typed corners, which count instead of the two lengths. The lengths stay where they are: Undo, or corners cleared on the page Field, brings the rectangle back.":
    "El campo es un rectángulo de {a} por {b} {unit}. Con una esquina movida pasa a ser un campo de esquinas escritas, que cuentan en lugar de los dos largos. Los largos quedan donde están: Deshacer, o borrar las esquinas en la página Campo, trae de vuelta el rectángulo.",
};
