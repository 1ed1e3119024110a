/**
 * What the functions say, in Spanish: the English with its places in braces, and the Spanish with
 * the same places. A place is translated by itself where it is a phrase; one whose name begins with
 * "label" where it is a label too. Names of arguments are neither, and stay.
 */
export type Messages = Readonly<Record<string, string>>;

/** Whole messages of errors. The first that fits is taken, so that the special stand before the general. */
export const errors: Messages = {
  "the result is beyond the range of numbers: check the size and the units of the arguments":
    "el resultado sale del rango de los números: revise la magnitud y las unidades de los argumentos",
  "the function failed: {message}": "la función falló: {message}",
  "there is no function {id}": "no existe la función {id}",
  "{name} must be text or a number; got {value}":
    "{name} debe ser texto o un número; recibió {value}",
  "{name} is missing: it must be text or a number": "falta {name}: debe ser texto o un número",
  "{name} must be text; got {value}": "{name} debe ser texto; recibió {value}",
  "{name} must be TRUE or FALSE; got {value}":
    "{name} debe ser TRUE o FALSE (VERDADERO o FALSO); recibió {value}",
  "{name} takes one cell; got {value}": "{name} acepta una sola celda; recibió {value}",
  "{name} takes one row or one column; got {value}":
    "{name} acepta una fila o una columna; recibió {value}",
  "{name} takes one value, one row or one column; got {value}":
    "{name} acepta un valor, una fila o una columna; recibió {value}",
  "inside takes one value, one column with a value per segment, or two columns (inside diameter, number of segments); got {value}":
    "inside acepta un valor, una columna con un valor por tramo, o dos columnas (diámetro interior, número de tramos); recibió {value}",
  "regulator takes one set pressure, one per head, or two columns (set, loss); got {value}":
    "regulator acepta una presión de regulación, una por aspersor, o dos columnas (regulación, pérdida); recibió {value}",
  "{name} is missing: it must be one of {list}": "falta {name}: debe ser uno de {list}",
  "{name} must be one of {list}; got {value}": "{name} debe ser uno de {list}; recibió {value}",
  "unknown {name} {value}. Did you mean: {close}? It must be one of {list}":
    "{name} no conoce {value}. ¿Quiso decir: {close}? Debe ser uno de {list}",
  "unknown {name} {value}. It must be one of {list}":
    "{name} no conoce {value}. Debe ser uno de {list}",
  "{name} could be {symbols}; got {value}": "{name} podría ser {symbols}; recibió {value}",
  "{name} has the unknown unit {value}. It must be one of {list}":
    "{name} tiene la unidad desconocida {value}. Debe ser una de {list}",
  "from and to must be of one quantity; {source} is {label1}, {target} is {label2}":
    "from y to deben ser de la misma magnitud; {source} es {label1}, {target} es {label2}",
  'prices lists "{name}" twice': 'prices tiene "{name}" dos veces',
  "no price for {items}": "falta el precio de {items}",
  "chart must have at least 2 rows, so that it has a range; got 1":
    "chart debe tener al menos 2 filas, para que tenga un intervalo; recibió 1",
  "{name} must have two points or more; got one": "{name} debe tener dos puntos o más; recibió uno",
  "the curves have no flow in common: one ends at {a}, the other begins at {b}":
    "las curvas no tienen ningún caudal en común: una termina en {a}, la otra empieza en {b}",
  "the curves lie on each other, so there is no one duty":
    "las curvas coinciden, así que no hay un punto de operación único",
  "the curves cross {count} times, at {flows}": "las curvas se cruzan {count} veces, en {flows}",
  "the curves meet at {flow} only, and the pump does not settle there: it must be above the demand at less flow and below it at more":
    "las curvas se encuentran solo en {flow}, y ahí la bomba no se estabiliza: debe estar por encima de la demanda con menos caudal y por debajo con más",
  "the curves do not cross from {a} to {b}: the pump is above the demand throughout; carry both curves to more flow":
    "las curvas no se cruzan de {a} a {b}: la bomba está siempre por encima de la demanda; prolongue ambas curvas hacia más caudal",
  "the curves do not cross from {a} to {b}: the pump is below the demand throughout; it cannot deliver this demand":
    "las curvas no se cruzan de {a} a {b}: la bomba está siempre por debajo de la demanda; no puede entregarla",
  "the points cover flows from {first} to {last}; got {flow}":
    "los puntos cubren caudales de {first} a {last}; recibió {flow}",
  "{name} must not fall in flow as the pressure rises; at {pressure} it falls to {flow}":
    "en {name} el caudal no debe bajar cuando la presión sube; a {pressure} baja a {flow}",
  'friction must be a Hazen–Williams C from {low} to {high}, or "Darcy"; got {value}':
    'friction debe ser una C de Hazen–Williams de {low} a {high}, o "Darcy"; recibió {value}',
  "heads row {n} head must be {next} of {run}; got {value}":
    "heads fila {n}, aspersor debe ser {next} de {run}; recibió {value}",
  "{name} must be more than at the head before it":
    "{name} debe ser mayor que en el aspersor anterior",
  "{name} has {count} {counted} for the {heads} heads of the longest run":
    "{name} tiene {count} {counted} para los {heads} aspersores de la línea más larga",
  "{name} has {count} {counted} for {places}": "{name} tiene {count} {counted} para {places}",
  "first goes with one spacing for all heads; a range of spacings already holds the distance from inlet to head 1":
    "first va con una sola distancia para todos los aspersores; un rango de distancias ya incluye la que hay de la entrada al aspersor 1",
  "{name} must have at most {count} letters; got {value}":
    "{name} debe tener como máximo {count} letras; recibió {value}",
  "{name} holds a sign that a map file cannot hold, such as a line break":
    "{name} tiene un signo que un archivo de mapa no admite, como un salto de línea",
  "needs must have at most {count} months; got {value}":
    "needs debe tener como máximo {count} meses; recibió {value}",
  "{name} must have one value or one a month; got {value} for {months} months of needs":
    "{name} debe tener un valor o uno por mes; recibió {value} para {months} meses de needs",
  "field must be one row, length and width ({unit}), or corners, x and y, in 3 to 200 rows":
    "field debe ser una fila, largo y ancho ({unit}), o los vértices, x e y, en 3 a 200 filas",
  'sprinklers lists "{name}" at {pressure} twice':
    'sprinklers tiene "{name}" a {pressure} dos veces',
  'sprinklers: the flow of "{name}" must not fall as the pressure rises; at {pressure} it falls to {flow}':
    'sprinklers: el caudal de "{name}" no debe bajar cuando la presión sube; a {pressure} baja a {flow}',
  "{name} lists the inside diameter {bore} twice":
    "{name} tiene el diámetro interior {bore} dos veces",
  "{name} lists {value} twice": "{name} tiene {value} dos veces",
  "terms give a slope and spots give heights: leave one of them blank":
    "terms da una pendiente y spots da alturas: deje en blanco uno de los dos",
  "no plan keeps to every limit; the choices are too many to say which one stands in the way: give fewer of them":
    "ningún plan cumple todos los límites; hay demasiadas opciones para decir cuál lo impide: dé menos",
  "no plan keeps to every limit, and leaving out any one of them gives none: at least two must move":
    "ningún plan cumple todos los límites, y quitar uno solo no basta: hay que mover al menos dos",
  'no plan keeps to every limit; without "{limit}" there is one: {needs}. So there is without {also}':
    'ningún plan cumple todos los límites; sin "{limit}" hay uno: {needs}. También lo hay sin {also}',
  'no plan keeps to every limit; without "{limit}" there is one: {needs}':
    'ningún plan cumple todos los límites; sin "{limit}" hay uno: {needs}',
  "terms must give a value for {names}": "terms debe dar un valor para {names}",
  "{name} has no value when blank": "{name} no tiene valor si queda en blanco",
  "{place} must name a term, one of {list}; got {value}":
    "{place} debe nombrar un término, uno de {list}; recibió {value}",
  'terms gives "{name}" twice': 'terms da "{name}" dos veces',
  "distance must have two values or more; got one":
    "distance debe tener dos valores o más; recibió uno",
  "distance must rise from point to point; value {n} is {a} after {b}":
    "distance debe aumentar de punto a punto; el valor {n} es {a} después de {b}",
  "{one} and {other} must have the same number of values; got {a} and {b}":
    "{one} y {other} deben tener la misma cantidad de valores; recibieron {a} y {b}",
  "lowest must not be above highest; got {a} and {b}":
    "lowest no debe ser mayor que highest; recibió {a} y {b}",
  "spacing puts head {n} of {run} {behind} behind head 1, the heads table {table}: give the spacing of the layout":
    "spacing pone el aspersor {n} de {run} a {behind} del aspersor 1, la tabla de aspersores a {table}: dé el espaciamiento del trazado",
  "lowest, as a target, in {run}: {message}": "lowest, como objetivo, en {run}: {message}",
  "strength is missing: it must be the design stress in {unit}, or one of {list}":
    "falta strength: debe ser el esfuerzo de diseño en {unit}, o uno de {list}",
  "strength must be the design stress, at most {greatest}; got {value}, which is a hydrostatic design basis or a minimum required strength: halve a basis (a few materials take more), divide an MRS by 1.25, or name the material":
    "strength debe ser el esfuerzo de diseño, como máximo {greatest}; recibió {value}, que es una base de diseño hidrostático o una resistencia mínima requerida: tome la mitad de la base (pocos materiales admiten más), divida la MRS entre 1.25, o nombre el material",
  "outside must be above inside; got {a} and {b}":
    "outside debe ser mayor que inside; recibió {a} y {b}",
  "inside must be below outside; got {a} in tubing of {b}":
    "inside debe ser menor que outside; recibió {a} en tubería de {b}",
  "length is missing: with a closure time it must be {limit}":
    "falta length: con un tiempo de cierre debe ser {limit}",
  "tmin must not be above tmax; got tmin {a} and tmax {b}":
    "tmin no debe ser mayor que tmax; recibió tmin {a} y tmax {b}",
  "rhmin must not be above rhmax; got rhmin {a} and rhmax {b}":
    "rhmin no debe ser mayor que rhmax; recibió rhmin {a} y rhmax {b}",
  "dewpoint must not be above tmax; got dewpoint {a} and tmax {b}":
    "dewpoint no debe ser mayor que tmax; recibió dewpoint {a} y tmax {b}",
  "sunshine must be at most {hours}, the length of day {day} at this latitude; got {value}":
    "sunshine debe ser como máximo {hours}, la duración del día {day} en esta latitud; recibió {value}",
  "radiation must be at most {most}, what reaches the atmosphere at this latitude on day {day}; got {value} (a mean in W/m² × 0.0864 is MJ/m²/day)":
    "radiation debe ser como máximo {most}, lo que llega a la atmósfera en esta latitud el día {day}; recibió {value} (una media en W/m² × 0.0864 da MJ/m²/día)",
  "no depth of water is enough at this adequacy with so low a cu: raise cu or lower adequacy":
    "con un cu tan bajo ninguna lámina alcanza para este adequacy: suba cu o baje adequacy",
  "rating {rating} is outside the published table, which runs from {low} to {high}":
    "rating {rating} está fuera de la tabla publicada, que va de {low} a {high}",
  "discharge rises too steeply between rows {a} and {b} (by rising pressure): check the chart":
    "discharge sube demasiado entre las filas {a} y {b} (por presión creciente): revise la tabla",
  "discharge does not change with the pressure at this flow, so the flow does not tell the pressure":
    "discharge no cambia con la presión en este caudal, así que el caudal no dice la presión",
  "discharge gives this flow at no pressure: its chart is flat there":
    "discharge no da este caudal a ninguna presión: su tabla es plana ahí",
  "the equation leaves less than 0.1 for the ground: et and wind are beyond what it was made for":
    "la ecuación deja menos de 0.1 para el suelo: et y wind van más allá de aquello para lo que se hizo",
  "rise falls so far that the lateral gets more than inlet with no pressure at the hydrant: use smaller tubing or a pressure regulator":
    "el terreno baja tanto que el lateral recibe más que inlet sin presión en el hidrante: use tubería menor o un regulador de presión",
  "move gives more than {count} positions across the corners":
    "move da más de {count} posiciones entre los vértices",
  "corners, obstacles and setback cut the rows into more than {count} runs":
    "corners, obstacles y setback cortan las filas en más de {count} líneas",
  "spacing and move give more than {count} heads": "spacing y move dan más de {count} aspersores",
  "no row has room for a head: use less setback or spacing, a shorter first, or another bearing":
    "ninguna fila tiene lugar para un aspersor: use menos setback o spacing, un first más corto, u otro rumbo",
  "catch must hold an odd number of cans, with the line at the middle one; got {value}":
    "catch debe tener un número impar de pluviómetros, con la línea en el del medio; recibió {value}",
  "move must be a whole number of steps; got a move of {move} and a step of {step}":
    "move debe ser un número entero de pasos; recibió un move de {move} y un step de {step}",
  "move must be at most {most} steps; got {value}":
    "move debe ser como máximo {most} pasos; recibió {value}",
  "spots lie on one line: three of them must form a triangle":
    "los puntos de spots están en una sola recta: tres de ellos deben formar un triángulo",
  "spots do not reach {name}: take heights farther out, beyond it":
    "spots no llega a {name}: tome alturas más afuera, más allá de ese lugar",
  "spots {a} and {b} are the same place": "los puntos {a} y {b} de spots son el mismo lugar",
  "no whole set fits into {days} days at {sets} a day: shorten the set or lengthen the interval":
    "en {days} días, a {sets} por día, no cabe ningún turno entero: acorte el turno o alargue el intervalo",
  "{name} is {distance} km from the origin; at most {most} km is flat enough for a plan":
    "{name} está a {distance} km del origen; hasta {most} km es bastante plano para un plano",
  "tubing lists {a} segments for {b} heads": "tubing suma {a} tramos para {b} aspersores",
  "catch must hold at least 2 cans; got {value}":
    "catch debe tener al menos 2 pluviómetros; recibió {value}",
  "catch holds no water: all {count} cans are 0":
    "catch no tiene agua: los {count} pluviómetros están en 0",
  "an amount is too large to give to the cent":
    "un importe es demasiado grande para darlo al centavo",
  "radial must hold at least 2 depths, at the head and one step out; got {value}":
    "radial debe tener al menos 2 láminas, en el aspersor y a un paso de él; recibió {value}",
  "radial reaches {reach}, more than {times} times the smaller of spacing and move ({least}): check step, spacing and move":
    "radial llega a {reach}, más de {times} veces el menor entre spacing y move ({least}): revise step, spacing y move",
  "size {size} is not in the {series} table here: it lists {list}":
    "el tamaño {size} no está en esta tabla {series}, que tiene {list}",
  "rating {rating} is not in the {series} table here for {size}: it lists {list}":
    "rating {rating} no está en esta tabla {series} para {size}, que tiene {list}",
  "temperature is above the published table: ask the pipe's manufacturer what it carries there":
    "temperature pasa de la tabla publicada: pregunte al fabricante de la tubería cuánto soporta ahí",
  "no pipe in insides is large enough: even the largest {reasons}; list larger pipe or carry less flow in it":
    "ninguna tubería de insides alcanza: aun la mayor {reasons}; dé tuberías mayores o lleve menos caudal",
  'rows must be at least {count}, as many points as "{name}" has; got {value}':
    'rows debe ser al menos {count}, los puntos que tiene "{name}"; recibió {value}',
  "corners {a} and {b} are the same place: the edge between them has no length":
    "los vértices {a} y {b} son el mismo lugar: el lado entre ellos no tiene largo",
  "corners lie on one line: the area is 0":
    "los vértices están en una sola recta: la superficie es 0",
  "corners: edge {a} {fault} edge {b}": "corners: el lado {a} {fault} el lado {b}",
  "no whole set fits into a day: hours + movehours is {a}, dayhours is {b}; give dayhours {c} where a set runs on unattended":
    "no cabe ningún turno entero en un día: hours + movehours es {a}, dayhours es {b}; dé {c} en dayhours si el turno sigue sin vigilancia",
  "the published time factors end at 24 hours of pull":
    "los factores de tiempo publicados terminan en 24 horas de tiro",
  "the water never runs out: the inflow makes up for all that is pumped":
    "el agua nunca se acaba: lo que entra repone todo lo que se bombea",
  "curve has no point at zero flow: add the pump's head with the valve shut":
    "curve no tiene punto con caudal cero: agregue la carga de la bomba con la válvula cerrada",
  "the pump's head at zero flow does not lift the water to the line":
    "la carga de la bomba con caudal cero no sube el agua hasta la línea",
  "the sun does not {what} at latitude {degrees} on day {day}: the equations need a day with a sunrise and a sunset":
    "el sol no {what} en la latitud {degrees} el día {day}: las ecuaciones necesitan un día con salida y puesta del sol",
  "lowest must be at most the average, {average}; got {value}":
    "lowest debe ser como máximo el promedio, {average}; recibió {value}",
  "value is below absolute zero; got {value}": "value está bajo el cero absoluto; recibió {value}",
  "no layout of these sizes keeps within the limits: raise the inlet pressure, use larger tubing, fewer heads or looser limits":
    "ningún tendido con estos tamaños cumple los límites: suba la presión de entrada, use tubería mayor, menos aspersores o límites más amplios",
  "{sizes} sizes on {count} heads can be laid in too many ways to try: use fewer sizes":
    "{sizes} tamaños en {count} aspersores se pueden tender de demasiadas maneras: use menos tamaños",
  "fall must be at most the length of the line": "fall debe ser como máximo el largo de la línea",
  "opening must be at most the inside diameter":
    "opening debe ser como máximo el diámetro interior",
  "air gets in at head {n} of {heads}, which stands above what is left of the pressure, and what lies beyond is no siphon: raise the inlet pressure, use larger tubing or fewer heads, or lay the line around that ground":
    "entra aire en el aspersor {n} de {heads}, que está más alto de lo que alcanza la presión que queda, y lo que sigue no es un sifón: suba la presión de entrada, use tubería mayor o menos aspersores, o rodee ese terreno",
  "pressure runs out at head {n} of {heads}: raise the inlet pressure, use larger tubing or fewer heads":
    "la presión se acaba en el aspersor {n} de {heads}: suba la presión de entrada, use tubería mayor o menos aspersores",
  "target needs an inlet pressure above 10 MPa (1450 psi)":
    "target necesita una presión de entrada de más de 10 MPa (1450 psi)",
  "the fall of the ground alone gives more than target":
    "la bajada del terreno por sí sola da más que target",
  "target is above what the regulators let through: lower it, or use regulators with a higher set pressure":
    "target pasa de lo que dejan los reguladores: bájelo, o use reguladores de mayor presión",
  "velocity needs an inlet pressure above 10 MPa (1450 psi)":
    "velocity necesita una presión de entrada de más de 10 MPa (1450 psi)",
  "the fall of the ground alone gives more than velocity":
    "la bajada del terreno por sí sola da más que velocity",
  "spacings and moves lay this field out in too many ways to try: give fewer of them, or fewer corners":
    "spacings y moves dan demasiados trazados de este campo para probarlos: dé menos, o menos vértices",
  "the pump does not lift the water to the lowest head: check curve, lift and rise":
    "la bomba no sube el agua hasta el aspersor más bajo: revise curve, lift y rise",
  "the lines take less water than the falling part of curve begins with: run more of them, or carry the curve to less flow":
    "las líneas toman menos agua que el inicio de la parte descendente de curve: riegue con más líneas, o prolongue la curva hacia menos caudal",
  "the lines take more water than the last point of curve gives: run fewer of them, or carry the curve to more flow":
    "las líneas toman más agua que la del último punto de curve: riegue con menos líneas, o prolongue la curva hacia más caudal",
  "even a line of one head does not keep within the limits: raise the inlet pressure, use larger tubing or looser limits":
    "ni una línea de un solo aspersor cumple los límites: suba la presión de entrada, use tubería mayor o límites más amplios",
  "{names} make {what}: give fewer of them": "{names} dan {what}: dé menos",
  "the pressures along this line span too many orders of magnitude to solve: check bores, units and discharge":
    "las presiones de esta línea abarcan demasiados órdenes de magnitud para resolverla: revise diámetros interiores, unidades y discharge",
  "the table of application rates ends at a slope of 16%: have the rate tested on the ground":
    "la tabla de intensidades de aplicación termina en una pendiente de 16%: haga probar la intensidad en el terreno",
  "the table of application rates has no profile for {texture}: have the rate tested on the ground":
    "la tabla de intensidades de aplicación no tiene un perfil para {texture}: haga probar la intensidad en el terreno",
  "{name} must have {least} to {most} rows; got {value}":
    "{name} debe tener de {least} a {most} filas; recibió {value}",
  "{name} must have at most {most} {what}; got {value}":
    "{name} debe tener como máximo {most} {what}; recibió {value}",
  "{name} is missing: it must be {limit}": "falta {name}: debe ser {limit}",
  "{name} must be {limit}; got {value}": "{name} debe ser {limit}; recibió {value}",
  "{name}: {message}": "{name}: {message}",
};

/** Parts of messages: limits, what came, places in a table. */
export const phrases: Messages = {
  "a blank": "una celda en blanco",
  "not a number": "algo que no es un número",
  "a value that is neither number nor text": "un valor que no es ni número ni texto",
  "a range of {rows} rows and {columns} columns": "un rango de {rows} filas y {columns} columnas",
  "a range of {rows} row and {columns} columns": "un rango de {rows} fila y {columns} columnas",
  "a range of {rows} rows and {columns} column": "un rango de {rows} filas y {columns} columna",
  "a range of {rows} row and {columns} column": "un rango de {rows} fila y {columns} columna",
  "a whole number, {low} or more": "un número entero, {low} o más",
  "a whole number from {low} to {high}": "un número entero de {low} a {high}",
  "a number in {unit}": "un número en {unit}",
  "a number, {limit}": "un número, {limit}",
  "a number": "un número",
  "a row or a column": "una fila o una columna",
  "at most {high} either way": "como máximo {high} en uno u otro sentido",
  "above {low} and at most {high}": "mayor que {low} y como máximo {high}",
  "above {low}": "mayor que {low}",
  "{low} or more": "{low} o más",
  "from {low} to {high}": "de {low} a {high}",
  "two or three columns, item, quantity and unit":
    "dos o tres columnas: artículo, cantidad y unidad",
  "two columns, x and y, or four or more, position, run, x and y":
    "dos columnas, x e y, o cuatro o más: posición, línea, x e y",
  "two columns, x and y, or three or more, hydrant, x and y":
    "dos columnas, x e y, o tres o más: hidrante, x e y",
  "six or seven columns, as FIELD.HEADS gives them: position, run, head, along, x, y and height":
    "seis o siete columnas, como las da FIELD.HEADS: posición, línea, aspersor, distancia, x, y, y altura",
  "two columns, flow and what the pump's sheet gives at it":
    "dos columnas, caudal y lo que da la ficha de la bomba con él",
  "two columns, name and value; the names are {names}":
    "dos columnas, nombre y valor; los nombres son {names}",
  "four columns, {label1}, {label2}, {label3} and {label4}":
    "cuatro columnas: {label1}, {label2}, {label3} y {label4}",
  "three columns, {label1}, {label2} and {label3}": "tres columnas: {label1}, {label2} y {label3}",
  "two columns, {label1} and {label2}": "dos columnas: {label1} y {label2}",
  "{what}, and the limit is {limit}": "{what}, y el límite es {limit}",
  crosses: "cruza",
  touches: "toca",
  "lies on": "está sobre",
  "{name} row {n} column {m}": "{name} fila {n} columna {m}",
  "rise of head {n}": "rise del aspersor {n}",
  "regulator of head {n} loss": "regulator del aspersor {n}, pérdida",
  "regulator of head {n}": "regulator del aspersor {n}",
  "{name} value {n}": "{name} valor {n}",
  "the near end of {run}": "el extremo cercano de {run}",
  "head {n} of {run}": "el aspersor {n} de {run}",
  "position {n}, run {m}": "la posición {n}, línea {m}",
  "{a} and {b}": "{a} y {b}",
  "loses more than maxloss": "pierde más que maxloss",
  "runs faster than maxvelocity": "lleva el agua más rápido que maxvelocity",
  rise: "sale",
  set: "se pone",
  "{n} × {m} cells": "{n} × {m} celdas",
  "{n} heads": "{n} aspersores",
  "{n} head": "{n} aspersor",
  "{n} segments": "{n} tramos",
  "{n} segment": "{n} tramo",
  values: "valores",
  segments: "tramos",
  rows: "filas",
  value: "valor",
  segment: "tramo",
  row: "fila",
  "more than {n} million designs": "más de {n} millones de diseños",
  "more plans to tell apart than a cell can wait for":
    "más planes distintos de los que una celda puede esperar",
};

/** Headers and labels of the tables that functions spill, and columns that messages name. */
export const labels: Messages = {
  "{label} ({unit})": "{label} ({unit})",
  head: "aspersor",
  distance: "distancia",
  elevation: "altura",
  "inside diameter": "diámetro interior",
  "line pressure": "presión en la línea",
  "nozzle pressure": "presión en la boquilla",
  "head flow": "caudal del aspersor",
  "segment flow": "caudal del tramo",
  speed: "velocidad",
  "friction loss": "pérdida por fricción",
  water: "agua",
  runs: "corre",
  dry: "seco",
  "part full": "parcialmente lleno",
  empty: "vacío",
  none: "ninguno",
  "flow into the lateral": "caudal que entra al lateral",
  "lowest nozzle pressure": "menor presión en boquilla",
  "lowest at head": "menor en el aspersor",
  "highest nozzle pressure": "mayor presión en boquilla",
  "highest at head": "mayor en el aspersor",
  "average nozzle pressure": "presión media en boquilla",
  "pressure variation": "variación de presión",
  "flow variation": "variación de caudal",
  "friction lost": "pérdida por fricción",
  "greatest speed": "mayor velocidad",
  length: "largo",
  "heads outside the chart's pressures": "aspersores fuera de las presiones de la tabla",
  "heads without pressure": "aspersores sin presión",
  "highest line pressure": "mayor presión en la línea",
  "highest line pressure at head": "mayor presión en la línea, en el aspersor",
  "lowest pressure under a regulator": "menor presión bajo un regulador",
  "air in the line": "aire en la línea",
  "gets in at head {n}: beyond it the water runs down part full, not as in a siphon":
    "entra en el aspersor {n}: más allá el agua baja con el tubo a medio llenar, no como en un sifón",
  "from head {n} on: it stands above what is left of the pressure, and no water passes it":
    "desde el aspersor {n}: está más alto de lo que alcanza la presión que queda, y no pasa agua",
  "flow of all lines": "caudal de todas las líneas",
  "hydrant pressure": "presión en el hidrante",
  "lateral inlet pressure": "presión a la entrada del lateral",
  "average flow per sprinkler": "caudal medio por aspersor",
  flow: "caudal",
  pressure: "presión",
  segments: "tramos",
  "number of segments": "número de tramos",
  cost: "costo",
  position: "posición",
  run: "línea",
  heads: "aspersores",
  along: "distancia",
  height: "altura",
  loss: "pérdida",
  radius: "radio",
  "inlet for the lowest": "entrada para la menor",
  hydrant: "hidrante",
  "first position": "primera posición",
  "last position": "última posición",
  "to spare": "de sobra",
  "leaves the field": "sale del campo",
  yes: "sí",
  no: "no",
  day: "día",
  start: "inicio",
  line: "línea",
  month: "mes",
  "held at the end": "queda al final",
  short: "faltante",
  "run over": "rebalse",
  "exponent x": "exponente x",
  "along the line": "a lo largo de la línea",
  "between positions": "entre posiciones",
  "near x": "x cercana",
  "near y": "y cercana",
  "far x": "x lejana",
  "far y": "y lejana",
  area: "superficie",
  "area covered": "superficie cubierta",
  "beyond the edge": "fuera del borde",
  positions: "posiciones",
  "heads of the longest run": "aspersores de la línea más larga",
  "heads in all": "aspersores en total",
  "share covered": "parte cubierta",
  "thrown beyond the edge": "echado fuera del borde",
  variation: "variación",
  intake: "infiltración",
  coverage: "cobertura",
  "spacing, share of the wetted diameter": "espaciamiento, parte del diámetro mojado",
  "move, share of the wetted diameter": "paso, parte del diámetro mojado",
  chart: "tabla",
  "pressure beyond the chart": "presión fuera de la tabla",
  "set hours": "horas del turno",
  "day hours": "horas del día",
  days: "días",
  "pump flow": "caudal de la bomba",
  "pump head": "carga de la bomba",
  "share of rating": "parte de la presión admisible",
  "most heads to shut off": "aspersores que cerrar, a lo más",
  bearing: "rumbo",
  latitude: "latitud",
  longitude: "longitud",
  "capital recovery": "recuperación del capital",
  upkeep: "mantenimiento",
  energy: "energía",
  labor: "mano de obra",
  total: "total",
  item: "artículo",
  quantity: "cantidad",
  unit: "unidad",
  price: "precio",
  amount: "importe",
  subtotal: "subtotal",
  markup: "margen",
  tax: "impuesto",
  "sprinkler head": "aspersor",
  saddle: "collarín",
  stand: "soporte",
  flag: "bandera",
  regulator: "regulador",
  "straight coupler": "unión recta",
  "reducing coupler": "unión reductora",
  "end cap": "tapón final",
  "quick connect": "conector rápido",
  "hydrant connection": "conexión al hidrante",
  "hydrant connection with valve, gauge and screen":
    "conexión al hidrante con válvula, manómetro y filtro de malla",
  "backflow device": "dispositivo contra reflujo",
  "tubing, {size}, roll of {length}": "tubería, {size}, rollo de {length}",
  "tubing, {size}": "tubería, {size}",
  "straight coupler, {size}": "unión recta, {size}",
  "reducing coupler, {a} to {b}": "unión reductora, {a} a {b}",
  "saddle, {size}": "collarín, {size}",
  "end cap, {size}": "tapón final, {size}",
  "quick connect, {size}": "conector rápido, {size}",
  "{label}, share of the wetted diameter": "{label}, parte del diámetro mojado",
  "net depth": "lámina neta",
  "season depth": "lámina de la temporada",
  "move hours": "horas de traslado",
  "main loss": "pérdida en la principal",
  "head price": "precio por aspersor",
  "line price": "precio por línea",
  "energy price": "precio de la energía",
  setback: "retiro",
  slope: "pendiente",
  wind: "viento",
  riser: "elevador",
  friction: "fricción",
  efficiency: "eficiencia",
  uniformity: "uniformidad",
  lift: "elevación",
  performance: "rendimiento",
  years: "años",
  interest: "interés",
  escalation: "encarecimiento",
  wage: "salario",
  each: "pieza",
  roll: "rollo",
  name: "nombre",
  size: "tamaño",
  rating: "presión admisible",
  "wetted diameter": "diámetro mojado",
  "price per {unit}": "precio por {unit}",
  value: "valor",
  limit: "límite",
  spacing: "espaciamiento",
  move: "paso entre posiciones",
  sprinkler: "aspersor",
  lines: "líneas",
  "cost a year": "costo por año",
  "capital a year": "capital por año",
  "energy a year": "energía por año",
  "labor a year": "mano de obra por año",
  "saving a year": "ahorro por año",
  "best without it": "el mejor sin él",
  "length or depth": "largo o lámina",
  volume: "volumen",
  "pressure or head of water": "presión o carga de agua",
  "speed or application rate": "velocidad o intensidad de aplicación",
  temperature: "temperatura",
  power: "potencia",
  force: "fuerza",
  mass: "masa",
  "water capacity of soil": "capacidad de agua del suelo",
  "solar radiation": "radiación solar",
  density: "densidad",
  "kinematic viscosity": "viscosidad cinemática",
};

/** What the CHECK functions say: what is, its limit, the cure. "OK" stays, for formulas test it. */
export const verdicts: Messages = {
  "{fact}; {bound}. {cure}.": "{fact}; {bound}. {cure}.",
  "Pressure varies by {value}": "La presión varía {value}",
  "Application rate is {value}": "La intensidad de aplicación es {value}",
  "Velocity is {value}": "La velocidad es {value}",
  "Pressure is {value}": "La presión es {value}",
  "Lowest pressure under a regulator is {value}": "La menor presión bajo un regulador es {value}",
  "Highest line pressure is {value}": "La mayor presión en la línea es {value}",
  "Spacing is {value}": "El espaciamiento es {value}",
  "Move is {value}": "El paso entre posiciones es {value}",
  "Suction head available is {value}": "La carga de succión disponible es {value}",
  "Suction head available is below 0, so the water boils before it reaches any pump":
    "La carga de succión disponible está bajo 0: el agua hierve antes de llegar a cualquier bomba",
  "Pull is {value}": "El tiro es {value}",
  "the soil takes in {bound}": "el suelo absorbe {bound}",
  "the limit is {bound} ({share} of the rating of {rating})":
    "el límite es {bound} ({share} de la presión admisible de {rating})",
  "the limit along the line is {bound} ({share})":
    "el límite a lo largo de la línea es {bound} ({share})",
  "the limit is {bound} ({share} at a wind of {wind})":
    "el límite es {bound} ({share} con viento de {wind})",
  "the limit is {bound}": "el límite es {bound}",
  "the regulators need {bound} (set {set}, loss {loss})":
    "los reguladores necesitan {bound} (regulación {set}, pérdida {loss})",
  "the regulators' limit is {bound}": "el límite de los reguladores es {bound}",
  "the chart begins at {bound}": "la tabla empieza en {bound}",
  "the chart ends at {bound}": "la tabla termina en {bound}",
  "the pump requires {bound}": "la bomba requiere {bound}",
  "the allowable pull is {bound}": "el tiro admisible es {bound}",
  "{share} of the wetted diameter of {diameter}": "{share} del diámetro mojado de {diameter}",
  "Use larger tubing, fewer sprinklers, a line with less slope, or regulators":
    "Use tubería mayor, menos aspersores, una línea con menos pendiente, o reguladores",
  "Use smaller nozzles, or a wider spacing or move":
    "Use boquillas menores, o más distancia entre aspersores o posiciones",
  "Use larger tubing, or send less flow through it":
    "Use tubería mayor, o lleve menos caudal por ella",
  "Use pipe and parts with a higher rating, or lower the pressure":
    "Use tubería y piezas de mayor presión admisible, o baje la presión",
  "Raise the inlet pressure or use larger tubing": "Suba la presión de entrada o use tubería mayor",
  "Lower the inlet pressure or use regulators made for more":
    "Baje la presión de entrada o use reguladores hechos para más",
  "Raise the pressure, or use a nozzle whose chart reaches down to it":
    "Suba la presión, o use una boquilla cuya tabla baje hasta ella",
  "Lower the pressure, or use a nozzle whose chart reaches up to it":
    "Baje la presión, o use una boquilla cuya tabla suba hasta ella",
  "Set the sprinklers closer, or use sprinklers that throw farther":
    "Acerque los aspersores, o use aspersores de mayor alcance",
  "Make shorter moves, use sprinklers that throw farther, or run when it is calmer":
    "Acorte el paso entre posiciones, use aspersores de mayor alcance, o riegue con menos viento",
  "Set the pump lower, use a shorter or larger suction pipe, or pump less":
    "Ponga la bomba más abajo, use una succión más corta o de mayor diámetro, o bombee menos",
  "Drain the line first, or tow it in shorter pieces":
    "Vacíe antes la línea, o remólquela por partes más cortas",
};
