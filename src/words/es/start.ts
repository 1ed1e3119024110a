import type { Texts } from "../translate";

/** What the trial page's start says, by its English; a place in braces holds what is said already. */
export const start: Texts = {
  Start: "Empezar",
  "Fieldsum: start from the field": "Fieldsum: empezar desde el campo",
  "Where to start": "Dónde empezar",
  "A new field": "Un campo nuevo",
  "My line": "Mi línea",
  "Say what the field and its water are like. A plan is proposed with the reason for each number, and opens in the workbook filled in.":
    "Diga cómo son el campo y su agua. Se propone un plan con la razón de cada número, y se abre en el libro ya lleno.",
  "Change what you know or wonder about. The answers stay in sight; nothing here changes your work.":
    "Cambie lo que sabe o lo que se pregunta. Las respuestas quedan a la vista; nada de aquí cambia su trabajo.",

  // The questions
  "The field": "El campo",
  "Soil and crop": "Suelo y cultivo",
  Water: "Agua",
  "Sprinkler and day": "Aspersor y jornada",
  "Name of the field": "Nombre del campo",
  "Stands in the workbook. May be blank.": "Queda en el libro. Puede estar en blanco.",
  "New field": "Campo nuevo",
  "Length along the lines": "Largo a lo largo de las líneas",
  "The side of the field that the lines lie along.":
    "El lado del campo a lo largo del cual van las líneas.",
  "Width across the lines": "Ancho a través de las líneas",
  "The way the lines move. A field that is no rectangle: take the workbook Plan.":
    "Hacia donde se mueven las líneas. Para un campo que no es rectángulo, tome el libro Plan.",
  "Rise along the length": "Subida a lo largo",
  "Ground at the far end above that at the inlets, 0 where it is level. Negative: downhill.":
    "Suelo en el extremo lejano sobre el de las entradas, 0 donde es llano. Negativo: cuesta abajo.",
  "Highest point of the field above the hydrant": "Punto más alto del campo sobre el hidrante",
  "0 where none is higher.": "0 donde ninguno es más alto.",
  "Lowest point of field and main below the hydrant":
    "Punto más bajo de campo y principal bajo el hidrante",
  "The pipe there bears the most. 0 where none is lower.":
    "Allí la tubería soporta más. 0 donde ninguno es más bajo.",
  Wind: "Viento",
  "Usual speed in the hours of irrigating.": "Velocidad usual en las horas de riego.",
  Soil: "Suelo",
  "Steepest slope of the ground": "Pendiente mayor del suelo",
  Crop: "Cultivo",
  "Water the crop uses a day": "Agua que usa el cultivo por día",
  "At the peak. The workbook Season computes it.": "En el pico. El libro Temporada lo calcula.",
  "Pressure at the hydrant, valve shut": "Presión en el hidrante, válvula cerrada",
  "The highest that the gauge shows, at night too: pipe and tubing must bear it.":
    "La más alta que muestra el manómetro, también de noche: principal y líneas deben soportarla.",
  "Pressure at the hydrant, water running": "Presión en el hidrante, con el agua corriendo",
  "While the flow below runs out of it.": "Mientras sale el caudal de abajo.",
  "Flow at that pressure": "Caudal a esa presión",
  "Pump's head at no flow": "Altura de la bomba sin caudal",
  "From the pump's curve, as the next two points.":
    "De la curva de la bomba, como los dos puntos que siguen.",
  "Second point, flow": "Segundo punto, caudal",
  "Second point, head": "Segundo punto, altura",
  "Last point, flow": "Último punto, caudal",
  "Last point, head": "Último punto, altura",
  "Hydrant above the water": "Hidrante sobre el agua",
  "Negative: below it.": "Negativo: por debajo.",
  "Length of the main to the hydrant": "Largo de la principal hasta el hidrante",
  "Wetted diameter of a sprinkler": "Diámetro mojado de un aspersor",
  "Lowest pressure wanted at a nozzle": "Presión mínima deseada en una boquilla",
  "Sprinkler chart, pressure, row 1": "Tabla del aspersor, presión, fila 1",
  "Sprinkler chart, flow, row 1": "Tabla del aspersor, caudal, fila 1",
  "Sprinkler chart, pressure, row 2": "Tabla del aspersor, presión, fila 2",
  "Sprinkler chart, flow, row 2": "Tabla del aspersor, caudal, fila 2",
  "Sprinkler chart, pressure, row 3": "Tabla del aspersor, presión, fila 3",
  "Sprinkler chart, flow, row 3": "Tabla del aspersor, caudal, fila 3",
  "As the sprinkler's sheet prints it, lowest first.":
    "Como lo imprime la hoja del aspersor, lo más bajo primero.",
  "Hours in a working day": "Horas de una jornada",
  "Hours to move a line": "Horas para mover una línea",
  "The water comes from": "El agua viene de",
  "A hydrant under pressure, with a gauge": "Un hidrante con presión y manómetro",
  "A pump, with its curve": "Una bomba, con su curva",
  "US: ft, psi, gpm": "US: ft, psi, gpm",
  "SI: m, kPa, m³/h": "SI: m, kPa, m³/h",
  "Choose…": "Elija…",
  "Change the sign: {label}": "Cambiar el signo: {label}",
  "Propose a plan": "Proponer un plan",
  "Fill in the sample field": "Llenar con el campo de muestra",
  "Empty the form": "Vaciar el formulario",

  // What is wrong
  "{label}: choose one.": "{label}: elija uno.",
  "{label}: blank. A number from {low} to {high} is due.":
    "{label}: en blanco. Corresponde un número de {low} a {high}.",
  '{label}: "{typed}" is not a number. One from {low} to {high} is due.':
    '{label}: "{typed}" no es un número. Corresponde uno de {low} a {high}.',
  "{label}: {why}": "{label}: {why}",
  "{label}: {typed} is not from {low} to {high}.": "{label}: {typed} no está entre {low} y {high}.",
  "{label}: a whole number is due.": "{label}: corresponde un número entero.",
  "{label}: the field rises or falls by more along its length than highest and lowest point lie apart. One of the three is wrong.":
    "{label}: a lo largo, el campo sube o baja más de lo que distan su punto más alto y el más bajo. Uno de los tres está mal.",
  "{label}: it cannot be above the pressure with the valve shut.":
    "{label}: no puede ser mayor que la presión con la válvula cerrada.",
  "{label}: it must be above the flow of the second point.":
    "{label}: debe ser mayor que el caudal del segundo punto.",
  "{label}: it cannot be above the head at no flow.":
    "{label}: no puede ser mayor que la altura sin caudal.",
  "{label}: it cannot be above the head of the second point.":
    "{label}: no puede ser mayor que la altura del segundo punto.",
  "Nothing is proposed yet. Fields that need something: {n}.":
    "Todavía no se propone nada. Casillas que necesitan algo: {n}.",
  'Something was changed. Press "Propose a plan" for a new one.':
    "Algo cambió. Pulse «Proponer un plan» para uno nuevo.",

  // The proposal
  "The proposal": "La propuesta",
  Proposed: "Propuesto",
  What: "Qué",
  Why: "Por qué",
  "What is proposed, and why": "Qué se propone, y por qué",
  "A plan that passes every check of the workbook.":
    "Un plan que pasa todas las verificaciones del libro.",
  "No plan fits all limits. Nothing is proposed.":
    "Ningún plan cumple todos los límites. No se propone nada.",
  "Which limit to move": "Qué límite mover",
  "Of the plans tried, the one that came nearest fails here:":
    "De los planes probados, el que más se acercó falla aquí:",
  "Open in {title}": "Abrir en {title}",
  "Taken over from the sample: check each in the workbook":
    "Tomado de la muestra: revise cada uno en el libro",
  "Sprinkler spacing": "Espaciamiento de aspersores",
  "SPRINKLER.SPACING: in a wind of {wind} a sprinkler that wets {wetted} may stand at most {most} from the next on the line. {length} in {count} equal parts.":
    "SPRINKLER.SPACING: con viento de {wind}, un aspersor que moja {wetted} puede estar a lo sumo a {most} del siguiente en la línea. {length} en {count} partes iguales.",
  "Inlet to sprinkler 1": "De la entrada al aspersor 1",
  "Half a spacing, so that the first and the last water up to the edge.":
    "Medio espaciamiento, para que el primero y el último rieguen hasta el borde.",
  "Sprinklers on each line": "Aspersores en cada línea",
  "LATERAL.HEADS: so many fit {length} at that spacing.":
    "LATERAL.HEADS: tantos caben en {length} con ese espaciamiento.",
  "The length is cut into {strips} strips, each with its own row of positions: with fewer, one line fails. {why}":
    "El largo se corta en {strips} franjas, cada una con su fila de posiciones: con menos, una línea falla. {why}",
  "Move from position to position": "Avance de posición a posición",
  "SPRINKLER.SPACING: at most {most} between positions in that wind, so that two of them overlap.":
    "SPRINKLER.SPACING: a lo sumo {most} entre posiciones con ese viento, para que dos se traslapen.",
  Positions: "Posiciones",
  "SET.POSITIONS: {width} in moves of {move}.": "SET.POSITIONS: {width} en avances de {move}.",
  "{count} in each of {strips} strips.": "{count} en cada una de {strips} franjas.",
  "Net depth of an irrigation": "Lámina neta de un riego",
  "SOIL.AWC, CROP.ROOT, CROP.DEPLETION and SOIL.NET: the soil gives the crop up to {most}. The crop uses {use}: this is the water of {days} days, of {longest} that the soil would last.":
    "SOIL.AWC, CROP.ROOT, CROP.DEPLETION y SOIL.NET: el suelo da al cultivo hasta {most}. El cultivo usa {use}: esta es el agua de {days} días, de {longest} que duraría el suelo.",
  Lines: "Líneas",
  "SYSTEM.LINES: {positions} positions within {days} days. Sets a day with each line: {sets}.":
    "SYSTEM.LINES: {positions} posiciones en {days} días. Turnos al día con cada línea: {sets}.",
  "Tubing of a line": "Tubería de una línea",
  "{large} mm all the way": "{large} mm en toda la línea",
  "{large} mm for {first} segments, then {small} mm for {rest}":
    "{large} mm en {first} tramos, luego {small} mm en {rest}",
  "LATERAL.VARIATION: pressure varies by {varies}, the limit is {limit}. LATERAL.SUMMARY: the water runs at up to {speed}, the limit is {most}.":
    "LATERAL.VARIATION: la presión varía {varies}, el límite es {limit}. LATERAL.SUMMARY: el agua corre a {speed} a lo sumo, el límite es {most}.",
  "With one segment less of the larger size a check fails.":
    "Con un tramo menos del tamaño mayor falla una verificación.",
  "Feeder, hydrant to line": "Alimentadora, de hidrante a línea",
  "FEEDER.LENGTH: reaches the {count} positions that a hydrant serves, with slack. PIPE.VELOCITY: within the limit at {flow}.":
    "FEEDER.LENGTH: alcanza las {count} posiciones que sirve un hidrante, con holgura. PIPE.VELOCITY: dentro del límite con {flow}.",
  "Main, to the last hydrant": "Principal, hasta el último hidrante",
  "PIPE.VELOCITY: within the limit at {flow}.": "PIPE.VELOCITY: dentro del límite con {flow}.",
  "What the main loses up to the gauge is in its reading.":
    "Lo que la principal pierde hasta el manómetro está en su lectura.",
  "PIPE.FRICTION: reckoned over {length}.": "PIPE.FRICTION: calculado sobre {length}.",
  "Pressure at the inlet of a line": "Presión en la entrada de una línea",
  "LATERAL.INLET: the least that gives the lowest nozzle {least}. PUMP.LINES: with all lines running there are {open}; throttle to the planned one at the valve.":
    "LATERAL.INLET: la mínima que da {least} a la boquilla más baja. PUMP.LINES: con todas las líneas corriendo hay {open}; estrangule en la válvula hasta la planeada.",
  "Flow of all lines": "Caudal de todas las líneas",
  "LATERAL.SUMMARY: {line} into each line, {head} from an average sprinkler.":
    "LATERAL.SUMMARY: {line} a cada línea, {head} de un aspersor medio.",
  "Set time": "Duración del turno",
  "SET.TIME: {depth} net at {rate} and an efficiency of {efficiency}. SOIL.INTAKE: the soil takes {intake}.":
    "SET.TIME: {depth} netos a {rate} y una eficiencia de {efficiency}. SOIL.INTAKE: el suelo toma {intake}.",
  "Days to cover the field": "Días para cubrir el campo",
  "SET.PERDAY: sets with their moves of {move} h that a day of {day} h holds: {sets}.":
    "SET.PERDAY: turnos, con sus movidas de {move} h, que caben en una jornada de {day} h: {sets}.",
  "Highest pressure that the pipe must bear": "Presión más alta que debe soportar la tubería",
  "PUMP.STATIC: {shut} at the lowest point with the valves shut, and PIPE.SURGE on top. PIPE.RATING: SDR {sdr} bears {rating} that warm.":
    "PUMP.STATIC: {shut} en el punto más bajo con las válvulas cerradas, y encima PIPE.SURGE. PIPE.RATING: SDR {sdr} soporta {rating} a esa temperatura.",
  "The strips lie end to end, with a row of hydrants at the start of each: the main is reckoned to the farthest.":
    "Las franjas van una tras otra, con una fila de hidrantes al comienzo de cada una: la principal se calcula hasta la más lejana.",
  "The workbook counts one hydrant for each line, so that the feeder is reckoned for all of its positions. With a hydrant in each strip it is shorter.":
    "El libro cuenta un hidrante por línea, así que la alimentadora se calcula para todas sus posiciones. Con un hidrante en cada franja es más corta.",
  "The workbook takes the hydrant for a pump: its head is what the gauge showed, and its energy is what that head is worth, not what your supplier spends.":
    "El libro toma el hidrante por una bomba: su altura es lo que mostró el manómetro, y su energía es lo que vale esa altura, no lo que gasta su proveedor.",

  // Which limit to move
  "{why}": "{why}",
  "The field takes more positions of a line than the workbook has room for.":
    "El campo pide más posiciones de una línea de las que caben en el libro.",
  "Move: plan it as several fields, each with lines of its own.":
    "Mueva: planéelo como varios campos, cada uno con líneas propias.",
  "The lines that the field needs, {lines}, take {all} together; there are {flow}.":
    "Las líneas que el campo necesita, {lines}, toman juntas {all}; hay {flow}.",
  "With {lines} lines running there are {open} at the inlet of a line; {planned} are needed.":
    "Con {lines} líneas corriendo hay {open} en la entrada de una línea; se necesitan {planned}.",
  "Move: more hours in the working day, or quicker moves.":
    "Mueva: más horas en la jornada, o movidas más rápidas.",
  "Move: the highest pressure at the hydrant, or the sprinkler's chart.":
    "Mueva: la presión más alta en el hidrante, o la tabla del aspersor.",
  "Move: the pressure of the water, or the pressure wanted at a nozzle.":
    "Mueva: la presión del agua, o la presión deseada en una boquilla.",
  "Move: a sprinkler whose chart reaches higher.": "Mueva: un aspersor cuya tabla llegue más alto.",
  "Move: a sprinkler that takes less water.": "Mueva: un aspersor que tome menos agua.",
  "Move: less flow, by more hours in the working day.":
    "Mueva: menos caudal, con más horas en la jornada.",
  "Move: the pressure with the valve shut, by a pressure-reducing valve that the supplier or an engineer chooses; or pipe with a higher rating.":
    "Mueva: la presión con la válvula cerrada, con una válvula reductora que elija el proveedor o un ingeniero; o tubería de mayor presión nominal.",
  "Move: the pressure with the valve shut, by a pressure-reducing valve that the supplier or an engineer chooses; or valves that close more slowly.":
    "Mueva: la presión con la válvula cerrada, con una válvula reductora que elija el proveedor o un ingeniero; o válvulas que cierren más despacio.",
  "Move: the water first, more flow or more pressure; else a sprinkler that runs at a lower pressure, more hours in the working day, or a smaller field.":
    "Mueva: primero el agua, más caudal o más presión; si no, un aspersor que trabaje a menor presión, más horas en la jornada, o un campo menor.",
  "Move: the pump nearer to the water.": "Mueva: la bomba, más cerca del agua.",
  "Move: a sprinkler with a smaller nozzle, or one that throws wider, so that the soil takes what falls.":
    "Mueva: un aspersor de boquilla menor, o uno de mayor alcance, para que el suelo tome lo que cae.",
  "Move: the hours of irrigating to those with less wind.":
    "Mueva: las horas de riego a las de menos viento.",
  "Move: more hours in the working day, quicker moves, more water, or a smaller field.":
    "Mueva: más horas en la jornada, movidas más rápidas, más agua, o un campo menor.",

  // A line
  "Pressure at the inlet": "Presión en la entrada",
  "What the gauge shows while the line runs.":
    "Lo que muestra el manómetro mientras la línea corre.",
  "Sprinklers on the line": "Aspersores en la línea",
  "Rise, inlet to last sprinkler": "Subida, de la entrada al último aspersor",
  "Negative: downhill.": "Negativo: cuesta abajo.",
  "With the pressure I have, does the last sprinkler get enough?":
    "Con la presión que tengo, ¿le llega bastante al último aspersor?",
  "Yes. The last sprinkler gets {last}, and every other {wanted} or more.":
    "Sí. Al último aspersor le llegan {last}, y a los demás {wanted} o más.",
  "The last one does: {last}. But sprinkler {head} gets only {least}; {wanted} are wanted.":
    "Al último sí: {last}. Pero al aspersor {head} solo le llegan {least}; se desean {wanted}.",
  "No. The last sprinkler gets {last}; {wanted} are wanted.":
    "No. Al último aspersor le llegan {last}; se desean {wanted}.",
  "It cannot be said. {why}": "No se puede decir. {why}",
  "Nothing is said until every field holds a number that fits.":
    "No se dice nada hasta que cada casilla tenga un número que sirva.",
  "Last sprinkler": "Último aspersor",
  Lowest: "Mínima",
  "Varies by": "Varía",
  Flow: "Caudal",
  Set: "Turno",
  Safety: "Seguridad",
  "The sample's line. Open your own layout first, and its tubing, sprinkler and soil stand behind these answers.":
    "La línea de la muestra. Abra primero su propio trazado, y su tubería, aspersor y suelo están detrás de estas respuestas.",
  'The line of "{own}": its tubing, sprinkler and soil.':
    'La línea de "{own}": su tubería, aspersor y suelo.',
  "Open these in Line layout": "Abrir estos en Trazado de una línea",
  "{own}: what if": "{own}: qué pasa si",
};
