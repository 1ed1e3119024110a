import type { Texts } from "../../translate";

/** What each function does, the question it answers, what it gives and its errors. */
export const functions: Texts = {
  "Converts irrigation units.": "Convierte unidades de riego.",
  "how do I change units?": "¿cómo cambio de unidades?",
  "The number in the other unit.": "El número en la otra unidad.",
  "#VALUE! for an unknown unit, two units of different quantities (the message names both), a temperature below absolute zero, a blank or text for value.":
    "#VALUE! con una unidad desconocida, dos unidades de magnitudes distintas (el mensaje nombra ambas), una temperatura bajo el cero absoluto, o value en blanco o con texto.",
  "Pressure lost to friction in one pipe segment.":
    "Presión que se pierde por fricción en un tramo de tubería.",
  "how much pressure does a pipe lose to friction?":
    "¿cuánta presión pierde una tubería por fricción?",
  "Pressure lost (psi, kPa).": "Presión perdida (psi, kPa).",
  "#VALUE! for a blank, text or negative flow or length, or an inside diameter that is not above 0.":
    "#VALUE! con un caudal o largo en blanco, con texto o negativo, o un diámetro interior que no es mayor que 0.",
  "Mean velocity of the water in a full pipe.": "Velocidad media del agua en una tubería llena.",
  "how fast does the water run in a pipe?": "¿qué tan rápido corre el agua en una tubería?",
  "Velocity (ft/s, m/s).": "Velocidad (ft/s, m/s).",
  "#VALUE! for a blank, text or negative flow, or an inside diameter that is not above 0.":
    "#VALUE! con un caudal en blanco, con texto o negativo, o un diámetro interior que no es mayor que 0.",
  "Pressure lost in a fitting, a valve or any other piece with a resistance coefficient.":
    "Presión que se pierde en un accesorio, una válvula u otra pieza con coeficiente de resistencia.",
  "how much pressure does a valve or an elbow take?": "¿cuánta presión toma una válvula o un codo?",
  "#VALUE! for a blank, text or negative flow or k, or an inside diameter that is not above 0.":
    "#VALUE! con un caudal o k en blanco, con texto o negativo, o un diámetro interior que no es mayor que 0.",
  "The smallest inside diameter of a list that keeps within a loss and a velocity.":
    "El menor diámetro interior de una lista que cumple con una pérdida y una velocidad.",
  "what size of pipe do I need?": "¿qué tamaño de tubería necesito?",
  "Inside diameter (in, mm), as it stands in the list.":
    "Diámetro interior (in, mm), como está en la lista.",
  "#N/A when no pipe on the list is large enough. #VALUE! for a blank, text or negative flow or length, a limit that is not above 0, or a list with a blank or a text inside it.":
    "#N/A cuando ninguna tubería de la lista alcanza. #VALUE! con un caudal o largo en blanco, con texto o negativo, un límite que no es mayor que 0, o una lista con una celda en blanco o un texto en medio.",
  "Largest flow that a pipe carries within a velocity limit.":
    "Mayor caudal que lleva una tubería dentro de un límite de velocidad.",
  "how much flow can a pipe carry?": "¿cuánto caudal puede llevar una tubería?",
  "Flow (gpm, m³/h).": "Caudal (gpm, m³/h).",
  "#VALUE! for an inside diameter or a velocity that is not above 0, or text.":
    "#VALUE! con un diámetro interior o una velocidad que no es mayor que 0, o con texto.",
  "Water that a full pipe holds.": "Agua que contiene una tubería llena.",
  "how much water does a pipe hold?": "¿cuánta agua cabe en una tubería?",
  "Volume (gal, L).": "Volumen (gal, L).",
  "#VALUE! for a blank, text or negative length, or an inside diameter that is not above 0.":
    "#VALUE! con un largo en blanco, con texto o negativo, o un diámetro interior que no es mayor que 0.",
  "Inside diameter of polyethylene pipe from a published dimension standard.":
    "Diámetro interior de tubería de polietileno según una norma de dimensiones publicada.",
  "what is the bore of this tubing?": "¿cuál es el diámetro interior de esta tubería?",
  "Inside diameter (in, mm).": "Diámetro interior (in, mm).",
  "#N/A for a size or a rating that the table does not list: the message names those it does. #VALUE! for an unknown series, a blank, text or a number that is not above 0.":
    "#N/A con un tamaño o una relación que la tabla no tiene: el mensaje nombra los que tiene. #VALUE! con una serie desconocida, una celda en blanco, texto o un número que no es mayor que 0.",
  "Outside diameter of polyethylene pipe from a published dimension standard.":
    "Diámetro exterior de tubería de polietileno según una norma de dimensiones publicada.",
  "what is the outside diameter of this tubing?": "¿cuál es el diámetro exterior de esta tubería?",
  "Mean outside diameter (in, mm); with PIPE.INSIDE, twice the mean wall apart.":
    "Diámetro exterior medio (in, mm); con PIPE.INSIDE difieren en dos paredes medias.",
  "How much longer a polyethylene line gets when its wall warms.":
    "Cuánto se alarga una línea de polietileno cuando su pared se calienta.",
  "how much slack does the line need for heat?": "¿cuánta holgura necesita la línea por el calor?",
  "Length gained (ft, m); below 0 it is shorter.": "Largo que gana (ft, m); bajo 0 se acorta.",
  "#VALUE! for a blank, text or negative length, or a change out of range.":
    "#VALUE! con un largo en blanco, con texto o negativo, o un cambio fuera de su intervalo.",
  "Allowable working pressure of polyethylene pipe from its design stress, dimension ratio and temperature.":
    "Presión de trabajo admisible de tubería de polietileno, según su esfuerzo de diseño, relación de dimensiones y temperatura.",
  "how much pressure may this pipe carry?": "¿cuánta presión puede llevar esta tubería?",
  "Pressure (psi, kPa).": "Presión (psi, kPa).",
  "#N/A above the temperature table (140 °F for the inch series, 40 °C for the metric). #VALUE! for an unknown material, a number that is a design basis or an MRS, or a ratio out of range.":
    "#N/A por encima de la tabla de temperaturas (140 °F en la serie en pulgadas, 40 °C en la métrica). #VALUE! con un material desconocido, un número que es una base de diseño o una MRS, o una relación fuera de su intervalo.",
  "Surge pressure when the flow in a pipe is stopped, above the running pressure.":
    "Golpe de ariete: sobrepresión, por encima de la de marcha, cuando se detiene el caudal de una tubería.",
  "how much pressure does a fast stop add?": "¿cuánta presión agrega un cierre rápido?",
  "Pressure (psi, kPa), to add to the running pressure.":
    "Presión (psi, kPa), que se suma a la de marcha.",
  "#VALUE! for an outside diameter that is not above the inside one, a closure without a length, a blank, text or a negative number.":
    "#VALUE! con un diámetro exterior que no es mayor que el interior, un cierre sin largo, o un número en blanco, con texto o negativo.",
  "Kinematic viscosity of water.": "Viscosidad cinemática del agua.",
  "how viscous is water at this temperature?": "¿qué viscosidad tiene el agua a esta temperatura?",
  "Kinematic viscosity (ft²/s, m²/s).": "Viscosidad cinemática (ft²/s, m²/s).",
  "#VALUE! for a blank, a text or a temperature at which water is no liquid.":
    "#VALUE! con una celda en blanco, texto o una temperatura a la que el agua no es líquida.",
  "Density of water.": "Densidad del agua.",
  "how heavy is water at this temperature?": "¿cuánto pesa el agua a esta temperatura?",
  "Density (lb/ft³, kg/m³).": "Densidad (lb/ft³, kg/m³).",
  "Vapor pressure of water: below it, water boils in a suction pipe.":
    "Presión de vapor del agua: por debajo de ella, el agua hierve en una tubería de succión.",
  "when does water boil in the suction?": "¿cuándo hierve el agua en la succión?",
  "Vapor pressure (psi, kPa), absolute.": "Presión de vapor (psi, kPa), absoluta.",
  "Flow of a sprinkler head at a pressure.": "Caudal de un aspersor a una presión.",
  "how much does a head give at this pressure?": "¿cuánto da un aspersor a esta presión?",
  "#VALUE! for a blank, text or negative pressure, or a chart with a blank, a repeated pressure or a flow that falls as the pressure rises.":
    "#VALUE! con una presión en blanco, con texto o negativa, o una tabla con una celda en blanco, una presión repetida o un caudal que baja cuando la presión sube.",
  "Pressure at which a sprinkler head gives a flow.": "Presión a la que un aspersor da un caudal.",
  "what pressure does a head need for this flow?":
    "¿qué presión necesita un aspersor para este caudal?",
  "Pressure at the nozzle (psi, kPa).": "Presión en la boquilla (psi, kPa).",
  "#N/A where the chart's flow does not change with the pressure. #VALUE! for a blank, text or negative flow, or a chart with a blank, a repeated pressure or a flow that falls as the pressure rises.":
    "#N/A donde el caudal de la tabla no cambia con la presión. #VALUE! con un caudal en blanco, con texto o negativo, o una tabla con una celda en blanco, una presión repetida o un caudal que baja cuando la presión sube.",
  "Flow of a round nozzle from its diameter.": "Caudal de una boquilla redonda según su diámetro.",
  "how much does a nozzle of this size give?": "¿cuánto da una boquilla de este tamaño?",
  "#VALUE! for a blank, text or negative pressure, a diameter that is not above 0, or a coefficient above 1.":
    "#VALUE! con una presión en blanco, con texto o negativa, un diámetro que no es mayor que 0, o un coeficiente mayor que 1.",
  "Spills the coefficient K and the exponent x of q = K·p^x, fitted to a sprinkler's chart.":
    "Despliega el coeficiente K y el exponente x de q = K·p^x, ajustados a la tabla de un aspersor.",
  "what is the K of this sprinkler?": "¿cuál es la K de este aspersor?",
  "Two rows of label and value: K (gpm per psi^x, m³/h per kPa^x) and the exponent x.":
    "Dos filas de rótulo y valor: K (gpm per psi^x, m³/h per kPa^x) y el exponente x.",
  "#VALUE! for a chart with a blank, text, a number that is not above 0, a repeated pressure or a flow that falls as the pressure rises.":
    "#VALUE! con una tabla que tiene una celda en blanco, texto, un número que no es mayor que 0, una presión repetida o un caudal que baja cuando la presión sube.",
  "Spills the largest spacing of heads along the line and of positions of the line, for a wetted diameter and a wind speed.":
    "Despliega la mayor distancia entre aspersores a lo largo de la línea y entre posiciones de la línea, para un diámetro mojado y una velocidad del viento.",
  "how far apart may heads and positions be?":
    "¿a qué distancia pueden estar aspersores y posiciones?",
  "Two rows of label and value: spacing along the line and between positions (ft, m).":
    "Dos filas de rótulo y valor: distancia a lo largo de la línea y entre posiciones (ft, m).",
  "#VALUE! for a wetted diameter that is not above 0, or a blank, text or negative wind.":
    "#VALUE! con un diámetro mojado que no es mayor que 0, o un viento en blanco, con texto o negativo.",
  "Pressure in the tubing at the nth head of a line.":
    "Presión en la tubería en el enésimo aspersor de una línea.",
  "what pressure does each head get?": "¿qué presión recibe cada aspersor?",
  "Line pressure (psi, kPa), in the tubing under the head; LATERAL.PROFILE gives the one at the nozzle.":
    "Presión en la línea (psi, kPa), en la tubería bajo el aspersor; LATERAL.PROFILE da la de la boquilla.",
  "#N/A when the pressure runs out before the last head; it names the first dry head, or the one that lets air in. #VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads; the message names the argument.":
    "#N/A cuando la presión se acaba antes del último aspersor; nombra el primer aspersor seco, o el que deja entrar aire. #VALUE! con un argumento en blanco, con texto o imposible, y con rangos que no corresponden al número de aspersores; el mensaje nombra el argumento.",
  "Flow of the nth head of a line.": "Caudal del enésimo aspersor de una línea.",
  "how much does each head give?": "¿cuánto da cada aspersor?",
  "Flow into a line of heads.": "Caudal que entra a una línea de aspersores.",
  "how much water does a line take?": "¿cuánta agua toma una línea?",
  "Spills one row per head of a line: head, distance, elevation, inside diameter, line pressure, nozzle pressure, head flow, segment flow, speed and friction loss of the segment before the head, and whether its water runs.":
    "Despliega una fila por aspersor de una línea: aspersor, distancia, altura, diámetro interior, presión en la línea, presión en la boquilla, caudal del aspersor, caudal, velocidad y pérdida por fricción del tramo anterior al aspersor, y si su agua corre.",
  "how do pressure and flow run along the line?":
    "¿cómo van la presión y el caudal a lo largo de la línea?",
  'A header row and one row per head, 11 columns, with the units in the header. The last says in words what the water does at the head: "runs"; "dry", its nozzle, above full tubing; "part full", air in the tubing and water running past; "empty", no water gets there. Where air stands, the line pressure is 0; the loss of a segment that runs part full is all its fall.':
    'Una fila de encabezados y una fila por aspersor, 11 columnas, con las unidades en el encabezado. La última dice con palabras qué hace el agua en el aspersor: "runs" (corre); "dry" (seco): su boquilla, por encima de la tubería llena; "part full": aire en la tubería y agua que pasa de largo; "empty": no llega agua. Donde hay aire, la presión en la línea es 0; la pérdida de un tramo que corre a medio llenar es toda su caída.',
  "#VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads; the message names the argument. Heads that run dry are shown with flow 0 and nozzle pressure 0.":
    "#VALUE! con un argumento en blanco, con texto o imposible, y con rangos que no corresponden al número de aspersores; el mensaje nombra el argumento. Los aspersores que quedan secos se muestran con caudal 0 y presión de boquilla 0.",
  "Spills label and value for a line: flow; lowest, highest and average nozzle pressure and where; pressure and flow variation; friction lost; greatest speed; length; heads outside the chart's pressures and without pressure; highest line pressure and where; lowest pressure under a regulator; air in the line.":
    "Despliega rótulo y valor de una línea: caudal; presión de boquilla menor, mayor y media y dónde; variación de presión y de caudal; pérdida por fricción; mayor velocidad; largo; aspersores fuera de las presiones de la tabla y sin presión; mayor presión en la línea y dónde; menor presión bajo un regulador; aire en la línea.",
  "does the line keep within the limits?": "¿cumple la línea con los límites?",
  '17 rows of label and value, with the unit in the label. The variations are fractions, (highest − lowest)/average, empty where no head runs. The highest line pressure is that of the inlet or at a head, while the line runs; the lowest under a regulator has the riser\'s height taken off and is empty without regulators: CHECK.REGULATOR takes both. The last row says in words at which head air gets in, or "none".':
    '17 filas de rótulo y valor, con la unidad en el rótulo. Las variaciones son fracciones, (mayor − menor)/media, vacías donde no corre ningún aspersor. La mayor presión en la línea es la de la entrada o la de un aspersor, mientras la línea corre; la menor bajo un regulador ya tiene descontada la altura del elevador y queda vacía sin reguladores: CHECK.REGULATOR toma ambas. La última fila dice con palabras en qué aspersor entra aire, o "none" (ninguno).',
  "Variation of the nozzle pressure along a line, (highest − lowest)/average.":
    "Variación de la presión de boquilla a lo largo de una línea, (mayor − menor)/media.",
  "is the pressure even enough along the line?": "¿es bastante pareja la presión en la línea?",
  "A fraction: 0.2 is the 20% of the trade's rule.":
    "Una fracción: 0.2 es el 20% de la regla del oficio.",
  "The smallest inlet pressure that gives a target pressure at the nozzle to the lowest head, on average or to the last.":
    "La menor presión de entrada que da una presión objetivo en la boquilla al aspersor más bajo, en promedio o al último.",
  "what pressure must the lateral start with?": "¿con qué presión debe empezar el lateral?",
  "Inlet pressure (psi, kPa).": "Presión de entrada (psi, kPa).",
  "#N/A when the target is above what the regulators let through, when it needs more than 10 MPa, when the fall of the ground alone gives more, or when another head runs dry (the message names it). #VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads.":
    "#N/A cuando el objetivo pasa de lo que dejan los reguladores, cuando necesita más de 10 MPa, cuando la sola bajada del terreno da más, o cuando otro aspersor queda seco (el mensaje lo nombra). #VALUE! con un argumento en blanco, con texto o imposible, y con rangos que no corresponden al número de aspersores.",
  "Whole heads that fit a length.": "Aspersores enteros que caben en un largo.",
  "how many heads fit the field?": "¿cuántos aspersores caben en el campo?",
  "Number of heads, 0 where the first does not fit.":
    "Número de aspersores, 0 donde no cabe el primero.",
  "#VALUE! for a blank, text or a length that is not above 0.":
    "#VALUE! con una celda en blanco, texto o un largo que no es mayor que 0.",
  "The most heads for which a line, and every shorter one, keeps within a pressure variation and other limits.":
    "El máximo de aspersores con que una línea, y toda otra más corta, cumple con una variación de presión y otros límites.",
  "how long may the line be?": "¿qué tan larga puede ser la línea?",
  "Number of heads, at most 500 or as many as the ranges cover.":
    "Número de aspersores, como máximo 500 o los que cubran los rangos.",
  "#N/A when even one head does not pass. #VALUE! for a blank, text or impossible argument.":
    "#N/A cuando ni un solo aspersor cumple. #VALUE! con un argumento en blanco, con texto o imposible.",
  "Spills how many segments of a line to lay in each size of tubing, large to small from the inlet, for the least cost within the limits.":
    "Despliega cuántos tramos de una línea tender en cada tamaño de tubería, de mayor a menor desde la entrada, con el menor costo dentro de los límites.",
  "where do I change from large tubing to small?": "¿dónde cambio de tubería grande a chica?",
  "A header row and one row per size, large to small: inside diameter, segments, length, cost. The first two columns below the header can be the inside argument of the other LATERAL functions; a size that is not used has 0 segments.":
    "Una fila de encabezados y una fila por tamaño, de mayor a menor: diámetro interior, tramos, largo, costo. Las dos primeras columnas bajo el encabezado sirven como argumento inside de las otras funciones LATERAL; un tamaño que no se usa tiene 0 tramos.",
  "#N/A when no layout keeps within the limits, or when many sizes on a long line can be laid in too many ways to try. #VALUE! for a blank, text or impossible argument, a size that is listed twice, and for ranges that don't fit the number of heads.":
    "#N/A cuando ningún tendido cumple los límites, o cuando muchos tamaños en una línea larga se pueden tender de demasiadas maneras. #VALUE! con un argumento en blanco, con texto o imposible, un tamaño que está dos veces, y rangos que no corresponden al número de aspersores.",
  "Multiple-outlet factor: friction in a line with equal outlets over that of the same line carrying the full flow to its end.":
    "Factor de salidas múltiples: fricción en una línea con salidas iguales dividida entre la de la misma línea llevando todo el caudal hasta el final.",
  "what is the friction factor for a line with outlets?":
    "¿cuál es el factor de fricción de una línea con salidas?",
  "A factor, 1 for one outlet.": "Un factor, 1 con una salida.",
  "#VALUE! for a number of outlets that is not a whole number from 1 to 500, or an exponent or ratio that is out of range.":
    "#VALUE! con un número de salidas que no es un entero de 1 a 500, o un exponente o una relación fuera de su intervalo.",
  "Friction lost in a line with equal outlets, by the handbook shortcut: friction of the full flow times the multiple-outlet factor.":
    "Pérdida por fricción en una línea con salidas iguales, por el atajo de los manuales: fricción de todo el caudal por el factor de salidas múltiples.",
  "how much pressure does a line lose, by the handbook?":
    "¿cuánta presión pierde una línea, según el manual?",
  "#VALUE! for a blank, text or negative flow or length, an inside diameter that is not above 0, or a number of outlets that is not a whole number from 1 to 500.":
    "#VALUE! con un caudal o largo en blanco, con texto o negativo, un diámetro interior que no es mayor que 0, o un número de salidas que no es un entero de 1 a 500.",
  "Uniformity of a whole line from the coefficient of uniformity of one spot.":
    "Uniformidad de toda una línea a partir del coeficiente de uniformidad de un lugar.",
  "how even is the whole line?": "¿qué tan pareja es toda la línea?",
  "A fraction.": "Una fracción.",
  "#VALUE! for a uniformity outside 0 to 1, a pressure that is not above 0, or a lowest pressure above the average.":
    "#VALUE! con una uniformidad fuera de 0 a 1, una presión que no es mayor que 0, o una menor presión por encima de la media.",
  "Spills one row per run of a line over a field, each solved on its own ground with the heads behind it shut off.":
    "Despliega una fila por tendido de una línea en un campo, cada uno resuelto en su propio terreno con los aspersores que sobran cerrados.",
  "which run of the field is the worst?": "¿cuál tendido del campo es el peor?",
  "A header row, then a row per run: position, run, heads, flow (gpm, m³/h), lowest and highest nozzle pressure, highest line pressure (psi, kPa), pressure variation, (highest − lowest)/average at the nozzles, and with a lowest the inlet pressure that gives it (psi, kPa).":
    "Una fila de encabezados, luego una fila por tendido: posición, línea, aspersores, caudal (gpm, m³/h), presión de boquilla menor y mayor, mayor presión en la línea (psi, kPa), variación de presión, (mayor − menor)/media en las boquillas, y si se pidió lowest, la presión de entrada que la da (psi, kPa).",
  "#N/A where no inlet pressure gives the lowest; it names the run. #VALUE! for a blank, text or impossible argument, a table of heads that is not in order, a spacing that is not that of the table, and ranges that end before the longest run. Heads that run dry show as a lowest pressure of 0.":
    "#N/A donde ninguna presión de entrada da la menor pedida; nombra el tendido. #VALUE! con un argumento en blanco, con texto o imposible, una tabla de aspersores que no está en orden, una distancia que no es la de la tabla, y rangos que terminan antes del tendido más largo. Los aspersores que quedan secos se muestran como una menor presión de 0.",
  "Shortest straight feeder that lets the near end of the line reach every position.":
    "Alimentadora recta más corta con que el extremo cercano de la línea llega a todas las posiciones.",
  "how long must the feeder be?": "¿qué tan larga debe ser la alimentadora?",
  "Length, in the unit of the move.": "Largo, en la unidad de move.",
  "#VALUE! for positions that are no whole number from 1 to 500, a move that is not above 0, or a negative setback.":
    "#VALUE! con posiciones que no son un entero de 1 a 500, un paso que no es mayor que 0, o un retiro negativo.",
  "Pressure needed at the hydrant for the pressure wanted where the lateral begins.":
    "Presión necesaria en el hidrante para la presión deseada donde empieza el lateral.",
  "what pressure must the hydrant give?": "¿qué presión debe dar el hidrante?",
  "#N/A when the fall alone gives more than the pressure wanted. #VALUE! for a blank, text or negative number where 0 or more is due, or an inside diameter that is not above 0.":
    "#N/A cuando la sola bajada da más que la presión deseada. #VALUE! con una celda en blanco, texto o un número negativo donde corresponde 0 o más, o un diámetro interior que no es mayor que 0.",
  "Spills the fewest hydrants on the row of near ends that reach every position of the line.":
    "Despliega los menos hidrantes, en la fila de extremos cercanos, que llegan a todas las posiciones de la línea.",
  "how many hydrants do I need, and where?": "¿cuántos hidrantes necesito, y dónde?",
  "A header row, then a row per hydrant: hydrant, x, y, first and last position that it serves, straight distance to the farthest of them, and which run of their rows.":
    "Una fila de encabezados, luego una fila por hidrante: hidrante, x, y, primera y última posición que atiende, distancia recta a la más lejana de ellas, y qué tendido de sus filas.",
  "#VALUE! for a blank or wrong end, or a reach that is not above 0.":
    "#VALUE! con un extremo en blanco o equivocado, o un alcance que no es mayor que 0.",
  "Spills whether a feeder reaches from the nearest hydrant to the near end of the line in every position.":
    "Despliega si una alimentadora llega del hidrante más cercano al extremo cercano de la línea en cada posición.",
  "does the feeder reach every position?": "¿llega la alimentadora a todas las posiciones?",
  'A header row, then a row for each end in its order: position, the nearest hydrant (its row), straight distance, feeder to spare (below 0: so much too short) and, with corners, "yes" where the straight way leaves the field, else "no".':
    'Una fila de encabezados, luego una fila por extremo en su orden: posición, el hidrante más cercano (su fila), distancia recta, alimentadora de sobra (bajo 0: lo que le falta) y, con vértices, "yes" (sí) donde el camino recto sale del campo, si no "no".',
  "#VALUE! for a blank or wrong end, hydrant, feeder or corner; corners as in FIELD.AREA.":
    "#VALUE! con un extremo, hidrante, alimentadora o vértice en blanco o equivocado; vértices como en FIELD.AREA.",
  "Total dynamic head that a pump must give.": "Carga dinámica total que debe dar una bomba.",
  "how much head must my pump make?": "¿cuánta carga debe dar mi bomba?",
  "Head (ft, m).": "Carga (ft, m).",
  "#VALUE! for a blank or text among the first three, or a negative pressure, loss or velocity.":
    "#VALUE! con una celda en blanco o texto en los tres primeros, o una presión, pérdida o velocidad negativa.",
  "Power at the pump's shaft.": "Potencia en el eje de la bomba.",
  "how large a motor does my pump need?": "¿qué tan grande debe ser el motor de mi bomba?",
  "Power (hp, kW).": "Potencia (hp, kW).",
  "#VALUE! for a blank, text or negative flow or head, or an efficiency outside 0 to 1.":
    "#VALUE! con un caudal o carga en blanco, con texto o negativo, o una eficiencia fuera de 0 a 1.",
  "Net positive suction head available at a pump that draws from open water.":
    "Carga neta positiva de succión disponible en una bomba que toma de agua abierta.",
  "can my pump draw water from this depth?":
    "¿puede mi bomba succionar el agua desde esta profundidad?",
  "Head (ft, m). Below 0 the water would boil before it reaches the pump.":
    "Carga (ft, m). Bajo 0 el agua herviría antes de llegar a la bomba.",
  "#VALUE! for a blank or text lift or loss, a negative loss, or a temperature or altitude out of range.":
    "#VALUE! con una altura o pérdida en blanco o con texto, una pérdida negativa, o una temperatura o altitud fuera de su intervalo.",
  "Energy or fuel that pumping takes.": "Energía o combustible que toma el bombeo.",
  "what does pumping cost in fuel or electricity?":
    "¿cuánto combustible o electricidad cuesta bombear?",
  "Electricity in kWh; diesel, propane and gasoline in gal or L; natural gas in 1000 ft³ or m³.":
    "Electricidad en kWh; diésel, propano y gasolina en gal o L; gas natural en 1000 ft³ o m³.",
  "#VALUE! for a blank, text or negative number, or a source that is not on the list.":
    "#VALUE! con un número en blanco, con texto o negativo, o una fuente que no está en la lista.",
  "Spills the flow and head at which a pump runs on a system.":
    "Despliega el caudal y la carga con que trabaja una bomba en un sistema.",
  "at what flow and pressure will my pump run?": "¿con qué caudal y presión trabajará mi bomba?",
  "A header row, then flow (gpm, m³/h) and head (ft, m).":
    "Una fila de encabezados, luego caudal (gpm, m³/h) y carga (ft, m).",
  "#VALUE! for a curve that is not two columns of numbers, one point only, or a flow listed twice. #N/A when the curves do not cross (and which is above), cross more than once (and where), or cross the wrong way round.":
    "#VALUE! con una curva que no son dos columnas de números, un solo punto, o un caudal repetido. #N/A cuando las curvas no se cruzan (y cuál está por encima), se cruzan más de una vez (y dónde), o se cruzan al revés.",
  "Any column of a pump's sheet at a flow: head, efficiency, suction head required or power.":
    "Cualquier columna de la ficha de una bomba a un caudal: carga, eficiencia, carga de succión requerida o potencia.",
  "what does my pump's sheet give at this flow?": "¿qué da la ficha de mi bomba a este caudal?",
  "What the curve gives at that flow, in the unit of the second column.":
    "Lo que da la curva a ese caudal, en la unidad de la segunda columna.",
  "#VALUE! for points that are not two columns of numbers, one point only, a flow listed twice, or a negative, blank or text flow. #N/A for a flow outside the points.":
    "#VALUE! con puntos que no son dos columnas de números, un solo punto, un caudal repetido, o un caudal negativo, en blanco o con texto. #N/A con un caudal fuera de los puntos.",
  "Highest pressure in the line while the pump runs against shut valves.":
    "Mayor presión en la línea mientras la bomba trabaja contra válvulas cerradas.",
  "what is the highest pressure my pipe can see?":
    "¿cuál es la mayor presión que puede ver mi tubería?",
  "#VALUE! for a curve that is not two columns of numbers, a blank or text lift, or a negative drop. #N/A when the curve has no point at zero flow, or does not lift the water to the line.":
    "#VALUE! con una curva que no son dos columnas de números, una altura en blanco o con texto, o una bajada negativa. #N/A cuando la curva no tiene punto con caudal cero, o no sube el agua hasta la línea.",
  "Spills label and value for equal lines that run on one pump: flow of all lines, pump head, hydrant pressure, lateral inlet pressure, lowest nozzle pressure and average flow per sprinkler.":
    "Despliega rótulo y valor para líneas iguales que trabajan con una bomba: caudal de todas las líneas, carga de la bomba, presión en el hidrante, presión a la entrada del lateral, menor presión de boquilla y caudal medio por aspersor.",
  "what pressure is left when one more line runs?":
    "¿qué presión queda cuando riega una línea más?",
  "6 rows of label and value, with the unit in the label.":
    "6 filas de rótulo y valor, con la unidad en el rótulo.",
  "#N/A when the pump does not lift the water to the lowest head, or the lines take less or more water than the curve covers. #VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads; the message names the argument.":
    "#N/A cuando la bomba no sube el agua hasta el aspersor más bajo, o las líneas toman menos o más agua que la que cubre la curva. #VALUE! con un argumento en blanco, con texto o imposible, y con rangos que no corresponden al número de aspersores; el mensaje nombra el argumento.",
  "Days that a pond or tank lasts.": "Días que dura un estanque o tanque.",
  "how many days will my pond last?": "¿cuántos días dura mi estanque?",
  "Days.": "Días.",
  "#VALUE! for a blank, text or negative value, or more than 24 hours. #N/A when the inflow makes up for all that is pumped: the water never runs out.":
    "#VALUE! con un valor en blanco, con texto o negativo, o más de 24 horas. #N/A cuando lo que entra repone todo lo que se bombea: el agua nunca se acaba.",
  "Spills month by month what a pond or tank holds after need, inflow and loss, and how much is short.":
    "Despliega mes por mes lo que queda en un estanque o tanque después de demanda, entradas y pérdidas, y cuánto falta.",
  "does my pond last through the season?": "¿alcanza mi estanque para toda la temporada?",
  "Header row, then one row a month: month (1 is the first), held at its end, short, run over (US gal, m³).":
    "Fila de encabezados, luego una fila por mes: mes (1 es el primero), lo que queda al final, faltante, rebalse (gal de EE. UU., m³).",
  "#VALUE! for a blank, text or negative value, more than 120 months, or inflows or losses that are neither one value nor one a month.":
    "#VALUE! con un valor en blanco, con texto o negativo, más de 120 meses, o entradas o pérdidas que no son ni un valor ni uno por mes.",
  "Average application rate: a head's flow over the ground it stands for.":
    "Intensidad media de aplicación: el caudal de un aspersor sobre el suelo que le toca.",
  "how fast does the water go on?": "¿qué tan rápido cae el agua?",
  "Average rate (in/h, mm/h), as discharged.":
    "Intensidad media (in/h, mm/h), como sale del aspersor.",
  "#VALUE! for a blank, text or negative flow, or a spacing or move that is not above 0.":
    "#VALUE! con un caudal en blanco, con texto o negativo, o una distancia o un paso que no es mayor que 0.",
  "Depth of water that a rate puts on in a time: gross, or net when an efficiency is given.":
    "Lámina de agua que aplica una intensidad en un tiempo: bruta, o neta si se da una eficiencia.",
  "how much water does a set put on?": "¿cuánta agua aplica un turno?",
  "Depth: in for a rate in in/h, mm for a rate in mm/h.":
    "Lámina: in con una intensidad en in/h, mm con una en mm/h.",
  "#VALUE! for a blank, text or negative rate or hours, or an efficiency above 1.":
    "#VALUE! con una intensidad u horas en blanco, con texto o negativas, o una eficiencia mayor que 1.",
  "Depth of water in a catch can.": "Lámina de agua en un pluviómetro.",
  "how deep is the water in a catch can?": "¿qué lámina hay en un pluviómetro?",
  "Depth (in, mm).": "Lámina (in, mm).",
  "#VALUE! for a blank, text or negative volume, or an opening that is not above 0.":
    "#VALUE! con un volumen en blanco, con texto o negativo, o una boca que no es mayor que 0.",
  "Christiansen uniformity of a catch, a fraction.":
    "Uniformidad de Christiansen de unas lecturas de pluviómetros, una fracción.",
  "how evenly does the water fall?": "¿qué tan pareja cae el agua?",
  "Fraction: 1 is even; a very poor catch falls below 0.":
    "Fracción: 1 es parejo; lecturas muy malas bajan de 0.",
  "#VALUE! for text, a negative catch, fewer than two cans, or cans that are all 0.":
    "#VALUE! con texto, una lectura negativa, menos de dos pluviómetros, o todos en 0.",
  "Distribution uniformity of a catch, a fraction: the mean of its lowest quarter over the mean of all.":
    "Uniformidad de distribución de unas lecturas, una fracción: la media del cuarto más bajo entre la media de todas.",
  "how dry is the driest quarter?": "¿qué tan seco queda el cuarto más seco?",
  "Fraction from 0 to 1.": "Fracción de 0 a 1.",
  "#VALUE! for text, a negative catch, fewer than two cans, cans that are all 0, or a fraction above 1.":
    "#VALUE! con texto, una lectura negativa, menos de dos pluviómetros, todos en 0, o una fracción mayor que 1.",
  "Spills the depths between four heads, from one head's radial catch overlapped with all others.":
    "Despliega las láminas entre cuatro aspersores, a partir de las lecturas radiales de uno traslapadas con las de todos los demás.",
  "what pattern do overlapping heads make?": "¿qué patrón hacen los aspersores que se traslapan?",
  "Depths in the unit of the radial catch, grid rows by grid columns, without a header: each row runs along the line from head to head, the rows go from one position to the next.":
    "Láminas en la unidad de las lecturas radiales, tantas filas y columnas como grid, sin encabezado: cada fila va a lo largo de la línea de aspersor a aspersor, las filas van de una posición a la siguiente.",
  "#VALUE! for a blank, text or negative value, fewer than two catches, a grid above 100, or a throw of more than 10 spacings or moves.":
    "#VALUE! con un valor en blanco, con texto o negativo, menos de dos lecturas, grid mayor que 100, o un alcance de más de 10 distancias o pasos.",
  "Spills the depths between two positions of a line, from one line's catch laid over itself at every move.":
    "Despliega las láminas entre dos posiciones de una línea, con las lecturas de una línea sumadas sobre sí mismas en cada paso.",
  "what falls between two positions?": "¿cuánto cae entre dos posiciones?",
  "Depths in the unit of the catch, one column of move ÷ step rows without a header: at the line, one step from it, and so on up to a step before the next position.":
    "Láminas en la unidad de las lecturas, una columna de move ÷ step filas sin encabezado: en la línea, a un paso de ella, y así hasta un paso antes de la posición siguiente.",
  "#VALUE! for a blank, text or negative catch, an even count of cans, or a move that is not a whole number of steps from 1 to 500.":
    "#VALUE! con una lectura en blanco, con texto o negativa, un número par de pluviómetros, o un move que no es un número entero de pasos de 1 a 500.",
  "Coarseness index of a sprinkler's spray, by pressure and nozzle.":
    "Índice de grosor de las gotas de un aspersor, según presión y boquilla.",
  "how fine is the spray?": "¿qué tan finas son las gotas?",
  "Index from 7 (coarse drops) to 17 (fine spray), without a unit.":
    "Índice de 7 (gotas gruesas) a 17 (gotas finas), sin unidad.",
  "#VALUE! for a blank or text, or a pressure or nozzle that is not above 0.":
    "#VALUE! con una celda en blanco o texto, o una presión o boquilla que no es mayor que 0.",
  "Part of the discharge that reaches the ground after evaporation and wind drift, a fraction.":
    "Parte de la descarga que llega al suelo después de la evaporación y el arrastre por el viento, una fracción.",
  "how much is lost to wind and sun?": "¿cuánto se pierde con viento y sol?",
  "Fraction, at most 0.982 and not below 0.1.": "Fracción, como máximo 0.982 y no menor que 0.1.",
  "#VALUE! for a blank, text or negative value; #N/A where the equation gives less than 0.1.":
    "#VALUE! con un valor en blanco, con texto o negativo; #N/A donde la ecuación da menos de 0.1.",
  "Application efficiency, a fraction, from uniformity and the share of the field that must get enough.":
    "Eficiencia de aplicación, una fracción, a partir de la uniformidad y de la parte del campo que debe recibir bastante.",
  "what efficiency do I plan with?": "¿con qué eficiencia planifico?",
  "Fraction.": "Fracción.",
  "#VALUE! for a blank or text, a fraction above 1, or an adequacy outside 0.5 to 0.95; #N/A where cu is so low that no depth is enough.":
    "#VALUE! con una celda en blanco o texto, una fracción mayor que 1, o adequacy fuera de 0.5 a 0.95; #N/A donde cu es tan bajo que ninguna lámina alcanza.",
  "Hours a set must run to put on a net depth.":
    "Horas que debe durar un turno para aplicar una lámina neta.",
  "how long do I run a set?": "¿cuánto tiempo riego en cada posición?",
  "Time, h.": "Tiempo, h.",
  "#VALUE! for a blank, text or negative depth, a rate that is not above 0, or an efficiency above 1.":
    "#VALUE! con una lámina en blanco, con texto o negativa, una intensidad que no es mayor que 0, o una eficiencia mayor que 1.",
  "Whole sets that fit into a day, with the time to move after each.":
    "Turnos enteros que caben en un día, con el tiempo de mover después de cada uno.",
  "how many sets a day?": "¿cuántos turnos por día?",
  "Whole sets a day. With dayhours 24, a set that is longer than the day gives the part of a set that a day makes: 0.5 where it takes two days. With fewer dayhours 0 where a set with its move is longer than them.":
    "Turnos enteros por día. Con dayhours 24, un turno más largo que el día da la parte de turno que hace un día: 0.5 donde toma dos días. Con menos dayhours, 0 donde un turno con su traslado pasa de ellas.",
  "#VALUE! for a blank or text, hours that are not above 0, negative movehours, or dayhours above 24.":
    "#VALUE! con una celda en blanco o texto, horas que no son mayores que 0, movehours negativas, o dayhours mayores que 24.",
  "Positions of the line that cover a width of field.":
    "Posiciones de la línea que cubren un ancho de campo.",
  "how many positions does the field take?": "¿cuántas posiciones tiene el campo?",
  "Whole positions.": "Posiciones enteras.",
  "#VALUE! for a blank or text, or a width or move that is not above 0.":
    "#VALUE! con una celda en blanco o texto, o un ancho o paso que no es mayor que 0.",
  "Spills the rotation of the lines over the positions, once round: which line stands where, and when.":
    "Despliega la rotación de las líneas por las posiciones, una vuelta: qué línea está dónde, y cuándo.",
  "in what order do I move the lines?": "¿en qué orden muevo las líneas?",
  "Header row, then one row a position in order of time: day (1 is the day of the first set), start hour of that day, line, position.":
    "Fila de encabezados, luego una fila por posición en orden de tiempo: día (1 es el día del primer turno), hora de inicio ese día, línea, posición.",
  "#VALUE! for a blank, text, an unknown order, or a number outside its range; #N/A where hours and movehours together are more than dayhours and these are fewer than 24.":
    "#VALUE! con una celda en blanco, texto, un orden desconocido, o un número fuera de su intervalo; #N/A donde hours y movehours juntas pasan de dayhours y estas son menos de 24.",
  "Flow that puts a gross depth on an area in so many days at so many hours a day.":
    "Caudal que aplica una lámina bruta en una superficie en tantos días a tantas horas al día.",
  "how much flow does the field need?": "¿cuánto caudal necesita el campo?",
  "#VALUE! for a blank or text, a negative area or depth, days that are not above 0, or hours above 24.":
    "#VALUE! con una celda en blanco o texto, una superficie o lámina negativa, días que no son mayores que 0, u horas mayores que 24.",
  "Days between irrigations: how long a net depth lasts.":
    "Días entre riegos: cuánto dura una lámina neta.",
  "how many days until I irrigate again?": "¿en cuántos días vuelvo a regar?",
  "Days, not rounded.": "Días, sin redondear.",
  "#VALUE! for a blank or text, a negative net depth, or a use that is not above 0.":
    "#VALUE! con una celda en blanco o texto, una lámina neta negativa, o un uso que no es mayor que 0.",
  "Lines needed to get round all positions in the days there are.":
    "Líneas necesarias para dar la vuelta a todas las posiciones en los días que hay.",
  "how many lines do I need?": "¿cuántas líneas necesito?",
  "Whole lines.": "Líneas enteras.",
  "#VALUE! for a blank or text, positions that are not a whole number, or sets or days that are not above 0; #N/A where no whole set fits into the days.":
    "#VALUE! con una celda en blanco o texto, posiciones que no son un número entero, o turnos o días que no son mayores que 0; #N/A donde ningún turno entero cabe en los días.",
  "Water for a depth on an area.": "Agua para una lámina en una superficie.",
  "how much water does the season take?": "¿cuánta agua toma la temporada?",
  "Volume (gal, m³).": "Volumen (gal, m³).",
  "#VALUE! for a blank, text or negative area or depth.":
    "#VALUE! con una superficie o lámina en blanco, con texto o negativa.",
  "Water that a soil of this texture holds for plants, per depth of soil.":
    "Agua que un suelo de esta textura guarda para las plantas, por profundidad de suelo.",
  "how much water does my soil hold?": "¿cuánta agua guarda mi suelo?",
  "Available water capacity (in/ft, mm/m): the average that the table prints.":
    "Capacidad de agua disponible (in/ft, mm/m): el promedio que imprime la tabla.",
  "#VALUE! for a blank or unknown texture, with the list.":
    "#VALUE! con una textura en blanco o desconocida, con la lista.",
  "Profile class, for SOIL.INTAKE, that a soil texture belongs to.":
    "Clase de perfil, para SOIL.INTAKE, a la que pertenece una textura de suelo.",
  "which profile class is my soil?": "¿de qué clase de perfil es mi suelo?",
  "Profile class, a text that SOIL.INTAKE takes.":
    "Clase de perfil, un texto que toma SOIL.INTAKE.",
  "#VALUE! for a blank or unknown texture, with the list, or a value of compact that is not TRUE or FALSE. #N/A for peat.":
    "#VALUE! con una textura en blanco o desconocida, con la lista, o un compact que no es TRUE ni FALSE. #N/A con turba.",
  "Largest rate at which sprinklers may apply water without runoff, by soil profile and slope.":
    "Mayor intensidad con que los aspersores pueden aplicar agua sin escurrimiento, según perfil de suelo y pendiente.",
  "how fast can my soil take water?": "¿qué tan rápido absorbe agua mi suelo?",
  "Largest application rate (in/h, mm/h).": "Mayor intensidad de aplicación (in/h, mm/h).",
  "#VALUE! for a blank or unknown profile, with the list, a blank, text or negative slope, or an unknown cover. #N/A for a slope above 16%.":
    "#VALUE! con un perfil en blanco o desconocido, con la lista, una pendiente en blanco, con texto o negativa, o una cobertura desconocida. #N/A con una pendiente mayor que 16%.",
  "Net depth of water to replace at an irrigation.":
    "Lámina neta de agua que se repone en un riego.",
  "how much water do I replace each time?": "¿cuánta agua repongo cada vez?",
  "Net depth (in, mm).": "Lámina neta (in, mm).",
  "#VALUE! for a blank or text, a number that is not above 0, a depletion above 1 or a capacity that no soil has.":
    "#VALUE! con una celda en blanco o texto, un número que no es mayor que 0, un agotamiento mayor que 1 o una capacidad que ningún suelo tiene.",
  "Effective rain of a month: the part that the crop can use.":
    "Lluvia efectiva de un mes: la parte que el cultivo puede usar.",
  "how much of the rain counts?": "¿cuánto de la lluvia cuenta?",
  "Effective rain (in, mm), never above the rain or the use.":
    "Lluvia efectiva (in, mm), nunca mayor que la lluvia ni que el uso.",
  "#VALUE! for a blank or text, a negative rain, or a use or net depth out of its range.":
    "#VALUE! con una celda en blanco o texto, una lluvia negativa, o un uso o lámina neta fuera de su intervalo.",
  "Depth of a crop's roots.": "Profundidad de las raíces de un cultivo.",
  "how deep do my crop's roots go?": "¿qué tan hondo llegan las raíces de mi cultivo?",
  "Greatest effective rooting depth (ft, m): the smaller of the published range.":
    "Mayor profundidad efectiva de raíces (ft, m): la menor del intervalo publicado.",
  "#VALUE! for a blank or unknown crop, with the list.":
    "#VALUE! con un cultivo en blanco o desconocido, con la lista.",
  "Share of the soil's available water that a crop may use before it suffers.":
    "Parte del agua disponible del suelo que un cultivo puede usar antes de sufrir.",
  "how dry may the soil get before I irrigate?":
    "¿qué tan seco puede quedar el suelo antes de regar?",
  "Depletion fraction, 0.1 to 0.8.": "Fracción de agotamiento, 0.1 a 0.8.",
  "#VALUE! for a blank or unknown crop, with the list, or an evapotranspiration that is text, negative or too large.":
    "#VALUE! con un cultivo en blanco o desconocido, con la lista, o una evapotranspiración con texto, negativa o demasiado grande.",
  "Crop coefficient: a crop's water use beside that of the reference grass.":
    "Coeficiente de cultivo: el uso de agua de un cultivo frente al del pasto de referencia.",
  "how much of the reference does my crop use?": "¿cuánto de la referencia usa mi cultivo?",
  "Single crop coefficient Kc: times ET.REFERENCE it is the crop's evapotranspiration.":
    "Coeficiente único de cultivo Kc: por ET.REFERENCE es la evapotranspiración del cultivo.",
  "#VALUE! for a blank or unknown crop or stage, with the list.":
    "#VALUE! con un cultivo o una etapa en blanco o desconocidos, con la lista.",
  "Evapotranspiration of the reference grass on one day, by the FAO Penman–Monteith equation.":
    "Evapotranspiración del pasto de referencia en un día, por la ecuación Penman–Monteith de la FAO.",
  "how much water does the weather take in a day?": "¿cuánta agua se lleva el clima en un día?",
  "Reference evapotranspiration (in/day, mm/day), 0 or more. Times a crop coefficient (CROP.KC) it is the crop's own.":
    "Evapotranspiración de referencia (in/day, mm/day), 0 o más. Por un coeficiente de cultivo (CROP.KC) es la del cultivo.",
  "#VALUE! for a blank or text, tmin above tmax, a dew point above tmax, more radiation than reaches the atmosphere, or a number out of its range. #N/A where the sun does not rise or does not set on that day.":
    "#VALUE! con una celda en blanco o texto, tmin mayor que tmax, un punto de rocío mayor que tmax, más radiación de la que llega a la atmósfera, o un número fuera de su intervalo. #N/A donde ese día el sol no sale o no se pone.",
  "Evapotranspiration of the reference grass on one day from its temperatures alone.":
    "Evapotranspiración del pasto de referencia en un día, solo con sus temperaturas.",
  "how much water does the weather take when I only know temperatures?":
    "¿cuánta agua se lleva el clima cuando solo conozco temperaturas?",
  "Reference evapotranspiration (in/day, mm/day), 0 or more.":
    "Evapotranspiración de referencia (in/day, mm/day), 0 o más.",
  "#VALUE! for a blank or text, tmin above tmax, or a number out of its range. #N/A where the sun does not rise or does not set on that day.":
    "#VALUE! con una celda en blanco o texto, tmin mayor que tmax, o un número fuera de su intervalo. #N/A donde ese día el sol no sale o no se pone.",
  "Dew point that stands for a day's temperatures and relative humidities.":
    "Punto de rocío que corresponde a las temperaturas y humedades relativas de un día.",
  "what dew point goes with this humidity?": "¿qué punto de rocío va con esta humedad?",
  "Dew point (°F, °C).": "Punto de rocío (°F, °C).",
  "#VALUE! for a blank or text, tmin above tmax, rhmin above rhmax, or a humidity that is not a fraction (60% is 0.6).":
    "#VALUE! con una celda en blanco o texto, tmin mayor que tmax, rhmin mayor que rhmax, o una humedad que no es fracción (60% es 0.6).",
  "Wind speed at 2 m above the ground, from a speed measured at another height.":
    "Velocidad del viento a 2 m del suelo, a partir de una medida a otra altura.",
  "what is the wind at 2 m when the station measures at 10 m?":
    "¿cuál es el viento a 2 m cuando la estación mide a 10 m?",
  "Wind speed at 2 m, 6.6 ft (mph, km/h).": "Velocidad del viento a 2 m, 6.6 ft (mph, km/h).",
  "#VALUE! for a blank, text or a number out of its range.":
    "#VALUE! con una celda en blanco, texto o un número fuera de su intervalo.",
  "Solar radiation of a day at the ground, from its hours of bright sunshine.":
    "Radiación solar de un día en el suelo, a partir de sus horas de sol brillante.",
  "how much solar radiation do sunshine hours mean?":
    "¿cuánta radiación solar son tantas horas de sol?",
  "Solar radiation (MJ/m²/day).": "Radiación solar (MJ/m²/day).",
  "#VALUE! for a blank or text, more sunshine than the day is long, or a number out of its range. #N/A where the sun does not rise or does not set on that day.":
    "#VALUE! con una celda en blanco o texto, más sol que la duración del día, o un número fuera de su intervalo. #N/A donde ese día el sol no sale o no se pone.",
  "Solar radiation of a day outside the atmosphere, on a level surface.":
    "Radiación solar de un día fuera de la atmósfera, en una superficie a nivel.",
  "how much sun could there be on this day?": "¿cuánto sol podría haber este día?",
  "Extraterrestrial radiation (MJ/m²/day).": "Radiación extraterrestre (MJ/m²/day).",
  "#VALUE! for a blank or text, a latitude beyond 90 or a day that is not a whole number from 1 to 366. #N/A where the sun does not rise or does not set on that day.":
    "#VALUE! con una celda en blanco o texto, una latitud de más de 90 o un día que no es un entero de 1 a 366. #N/A donde ese día el sol no sale o no se pone.",
  "Daily use of a crop in the peak period of its peak month, for which a system is sized.":
    "Uso diario de un cultivo en el período máximo de su mes de máximo, para el que se dimensiona un sistema.",
  "how much water does the crop use a day at its peak?":
    "¿cuánta agua usa el cultivo por día en su máximo?",
  "Use (in/day, mm/day), for SYSTEM.INTERVAL.": "Uso (in/day, mm/day), para SYSTEM.INTERVAL.",
  "#VALUE! for a blank or text, or a number that is out of its range.":
    "#VALUE! con una celda en blanco o texto, o un número fuera de su intervalo.",
  "Flow that carries grit out of the open end of a line.":
    "Caudal que arrastra la arena por el extremo abierto de una línea.",
  "how much water do I need to flush a line?": "¿cuánta agua necesito para lavar una línea?",
  "#VALUE! for a blank, text or negative inside diameter or speed.":
    "#VALUE! con un diámetro interior o una velocidad en blanco, con texto o negativos.",
  "Inlet pressure that gives a velocity of water in the last segment of a line with the end cap off.":
    "Presión de entrada que da una velocidad del agua en el último tramo de una línea sin el tapón final.",
  "what pressure do I need to flush a line?": "¿qué presión necesito para lavar una línea?",
  "#N/A when the speed needs more than 10 MPa, or the fall of the ground alone gives more. #VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads; the message names the argument.":
    "#N/A cuando la velocidad necesita más de 10 MPa, o la sola bajada del terreno da más. #VALUE! con un argumento en blanco, con texto o imposible, y con rangos que no corresponden al número de aspersores; el mensaje nombra el argumento.",
  "Minutes to change the water in a line.": "Minutos para cambiar el agua de una línea.",
  "how long do I flush a line?": "¿cuánto tiempo lavo una línea?",
  "Minutes.": "Minutos.",
  "#VALUE! for a blank, text or negative value, or ranges that differ in their number of values.":
    "#VALUE! con un valor en blanco, con texto o negativo, o rangos que difieren en su cantidad de valores.",
  "Water in a full line, of one size of tubing or of several.":
    "Agua en una línea llena, de un tamaño de tubería o de varios.",
  "how much water runs out when I open the line?": "¿cuánta agua sale cuando abro la línea?",
  "Water that stays in the dips of a line once its ends are open.":
    "Agua que queda en los puntos bajos de una línea con los extremos abiertos.",
  "how much water freezes in the dips of my line?":
    "¿cuánta agua se congela en los puntos bajos de mi línea?",
  "#VALUE! for distances that do not rise, ranges of different counts, text, or an inside diameter that is not above 0.":
    "#VALUE! con distancias que no aumentan, rangos de distinta cantidad, texto, o un diámetro interior que no es mayor que 0.",
  "Minutes that a line on a steady fall takes to run out.":
    "Minutos que tarda en vaciarse una línea con bajada pareja.",
  "how long does my line take to drain?": "¿cuánto tarda en vaciarse mi línea?",
  "#VALUE! for a blank, text or a value that is not above 0, a fall above the length, or an opening above the inside diameter.":
    "#VALUE! con una celda en blanco, texto o un valor que no es mayor que 0, una bajada mayor que el largo, o una abertura mayor que el diámetro interior.",
  "Weight of a line on the ground.": "Peso de una línea sobre el suelo.",
  "how heavy is my line to pull?": "¿cuánto pesa mi línea para tirarla?",
  "Weight (lb, kg).": "Peso (lb, kg).",
  "#VALUE! for a blank, text or negative value, ranges of different counts, or an inside diameter not below the outside one.":
    "#VALUE! con un valor en blanco, con texto o negativo, rangos de distinta cantidad, o un diámetro interior que no es menor que el exterior.",
  "Pull at the hitch that drags a line over the ground.":
    "Tiro en el enganche que arrastra una línea por el suelo.",
  "how hard must I pull to move a line?": "¿con cuánta fuerza tiro para mover una línea?",
  "Pull (lbf, N), never below 0.": "Tiro (lbf, N), nunca bajo 0.",
  "#VALUE! for a blank, text or negative value, or a drag or slope out of range.":
    "#VALUE! con un valor en blanco, con texto o negativo, o un arrastre o una pendiente fuera de su intervalo.",
  "Pull that tubing and its joints bear when a line is towed.":
    "Tiro que soportan la tubería y sus uniones cuando se remolca una línea.",
  "how hard may I pull on the tubing?": "¿con cuánta fuerza puedo tirar de la tubería?",
  "Pull (lbf, N): the lesser of the tubing's and the joint's.":
    "Tiro (lbf, N): el menor entre el de la tubería y el de la unión.",
  "#VALUE! for a blank or text among the first three or a value out of range. #N/A above 140 °F or 24 hours.":
    "#VALUE! con una celda en blanco o texto en los tres primeros o un valor fuera de su intervalo. #N/A por encima de 140 °F o 24 horas.",
  "Least radius that tubing may be bent to when a line is turned or coiled.":
    "Menor radio al que se puede curvar la tubería cuando se gira o enrolla una línea.",
  "how tightly may I turn the line?": "¿qué tan cerrado puedo girar la línea?",
  "Radius, in the unit of the outside diameter.": "Radio, en la unidad del diámetro exterior.",
  "#VALUE! for a blank, text, an outside diameter that is not above 0, or a fitting that is not TRUE or FALSE. #N/A for a ratio outside 11 to 26.":
    "#VALUE! con una celda en blanco, texto, un diámetro exterior que no es mayor que 0, o un fitting que no es TRUE ni FALSE. #N/A con una relación fuera de 11 a 26.",
  "Spills where to put a flag for every head of a line.":
    "Despliega dónde poner una bandera para cada aspersor de una línea.",
  "where do I put the flags for the heads?": "¿dónde pongo las banderas de los aspersores?",
  "A header row, then a row per head: head, distance from the inlet end (ft, m) and, with a start, latitude and longitude (degrees, WGS 84).":
    "Una fila de encabezados, luego una fila por aspersor: aspersor, distancia desde el extremo de entrada (ft, m) y, con un comienzo, latitud y longitud (grados, WGS 84).",
  "#VALUE! for a blank or wrong count or spacing, ranges that do not fit the heads, or a latitude, longitude or bearing that is missing or out of range.":
    "#VALUE! con una cantidad o distancia en blanco o equivocada, rangos que no corresponden a los aspersores, o una latitud, longitud o rumbo que falta o está fuera de su intervalo.",
  "Spills where to put the flags for the two ends of every position of a line.":
    "Despliega dónde poner las banderas de los dos extremos de cada posición de una línea.",
  "where do I put the flags for every position?": "¿dónde pongo las banderas de cada posición?",
  "A header row, then for every position a row for its near end (across 0) and one for its far end (across the length): position, along, across (ft, m) and, with a start, latitude and longitude (degrees, WGS 84).":
    "Una fila de encabezados, luego por cada posición una fila para su extremo cercano (a través 0) y una para su extremo lejano (a través el largo): posición, a lo largo, a través (ft, m) y, con un comienzo, latitud y longitud (grados, WGS 84).",
  "#VALUE! for a blank or wrong count, move or length, or a latitude, longitude or bearing that is missing or out of range.":
    "#VALUE! con una cantidad, un paso o un largo en blanco o equivocado, o una latitud, longitud o rumbo que falta o está fuera de su intervalo.",
  "Spills the lines of a map file for flags: a GPX, KML or GeoJSON file's text, a line a row.":
    "Despliega las líneas de un archivo de mapa para las banderas: el texto de un archivo GPX, KML o GeoJSON, una línea por fila.",
  "how do I load the flags into a receiver?": "¿cómo cargo las banderas en un receptor?",
  "One column of text, the file from its first line to its last. Copy it into a plain text editor and save it in UTF-8 under a name that ends in .gpx, .kml or .geojson.":
    "Una columna de texto, el archivo de su primera línea a la última. Cópiela en un editor de texto sencillo y guárdela en UTF-8 con un nombre que termine en .gpx, .kml o .geojson.",
  "#VALUE! for an unknown format, a blank or wrong point, a name with a line break, or a point more than 20 km from the origin; the message names the row.":
    "#VALUE! con un formato desconocido, un punto en blanco o equivocado, un nombre con salto de línea, o un punto a más de 20 km del origen; el mensaje nombra la fila.",
  "Spills places given in degrees as x and y about an origin.":
    "Despliega lugares dados en grados como x e y alrededor de un origen.",
  "how do I bring corners from a map or a receiver into the plan?":
    "¿cómo llevo al plano los vértices de un mapa o un receptor?",
  "A header row, then x east and y north (ft, m) of each place.":
    "Una fila de encabezados, luego x al este e y al norte (ft, m) de cada lugar.",
  "#VALUE! for a blank or wrong place or origin, or a place more than 20 km from the origin; the message names the row.":
    "#VALUE! con un lugar u origen en blanco o equivocado, o un lugar a más de 20 km del origen; el mensaje nombra la fila.",
  "Spills latitude and longitude of places given as x and y about an origin.":
    "Despliega latitud y longitud de lugares dados como x e y alrededor de un origen.",
  "where on the map is a place of the plan?": "¿en qué parte del mapa está un lugar del plano?",
  "A header row, then latitude and longitude of each place, decimal degrees (WGS 84).":
    "Una fila de encabezados, luego latitud y longitud de cada lugar, grados decimales (WGS 84).",
  "Area of a field from its corners.": "Superficie de un campo a partir de sus vértices.",
  "how large is the field?": "¿qué tan grande es el campo?",
  "Area (acre, ha), on the level.": "Superficie (acre, ha), a nivel.",
  "#VALUE! for a blank or wrong corner, corners that are the same place or lie on one line, and edges that cross or touch; the message names them.":
    "#VALUE! con un vértice en blanco o equivocado, vértices que son el mismo lugar o están en una recta, y lados que se cruzan o tocan; el mensaje los nombra.",
  "Spills the runs of a line over a field of any shape: where the line lies in each position, and what it waters.":
    "Despliega los tendidos de una línea en un campo de cualquier forma: dónde queda la línea en cada posición, y qué riega.",
  "where does the line lie in a field that is no rectangle?":
    "¿dónde queda la línea en un campo que no es rectángulo?",
  "A header row, then a row per run: position, run (more than one where a row is cut), x and y of its near end and far end (ft, m), length (ft, m), heads, area covered inside the edge and area thrown beyond it (acre, ha).":
    "Una fila de encabezados, luego una fila por tendido: posición, línea (más de una donde la fila está cortada), x e y de su extremo cercano y de su extremo lejano (ft, m), largo (ft, m), aspersores, superficie cubierta dentro del borde y superficie mojada fuera de él (acre, ha).",
  "#VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head.":
    "#VALUE! con un número en blanco o equivocado, vértices que son el mismo lugar, están en una recta, o tienen lados que se cruzan o tocan (nombrados por sus vértices), y con más de 500 posiciones, 1,000 tendidos o 5,000 aspersores. #N/A donde ninguna fila tiene lugar para un aspersor.",
  "Spills every head of every run of a field: where it stands and, with spots, how high.":
    "Despliega todos los aspersores de todos los tendidos de un campo: dónde está cada uno y, con spots, a qué altura.",
  "where does every head stand?": "¿dónde queda cada aspersor?",
  "A header row, then a row per head: position, run, head from the near end, distance along the run from its near end, x and y (ft, m) and, with spots, height of the ground above the run's near end (ft, m).":
    "Una fila de encabezados, luego una fila por aspersor: posición, línea, aspersor desde el extremo cercano, distancia desde ese extremo, x e y (ft, m) y, con spots, altura del terreno sobre el extremo cercano de la línea (ft, m).",
  "#VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head, or where spots do not reach a head or a near end.":
    "#VALUE! con un número en blanco o equivocado, vértices que son el mismo lugar, están en una recta, o tienen lados que se cruzan o tocan (nombrados por sus vértices), y con más de 500 posiciones, 1,000 tendidos o 5,000 aspersores. #N/A donde ninguna fila tiene lugar para un aspersor, o donde spots no llega a un aspersor o a un extremo cercano.",
  "Spills label and value: a layout of lines in a field at a glance.":
    "Despliega rótulo y valor: un trazado de líneas en un campo, de un vistazo.",
  "how many runs does the field take, and what is left dry?":
    "¿cuántos tendidos toma el campo, y qué queda seco?",
  "Two columns, label and value: area (acre, ha), positions, runs, heads of the longest run, heads in all, share of the area covered, area thrown beyond the edge (acre, ha), and most heads to shut off: how many fewer the shortest run has.":
    "Dos columnas, rótulo y valor: superficie (acre, ha), posiciones, tendidos, aspersores de la línea más larga, aspersores en total, parte de la superficie cubierta, superficie mojada fuera del borde (acre, ha), y aspersores que cerrar a lo más: cuántos menos tiene el tendido más corto.",
  "Spills the ways a line can lie in a field, bearing by bearing, fewest runs first.":
    "Despliega las maneras de poner una línea en un campo, rumbo por rumbo, primero las de menos tendidos.",
  "which way should the lines run?": "¿hacia dónde conviene poner las líneas?",
  "A header row, then a row per bearing from 0 to below 180 degrees: bearing, runs, heads, share of the area covered and, with spots, the steepest ground along the line from head to head (percent, uphill or downhill). Fewest runs first, then the greater share covered. Bearings at which no head fits are left out.":
    "Una fila de encabezados, luego una fila por rumbo de 0 hasta menos de 180 grados: rumbo, tendidos, aspersores, parte de la superficie cubierta y, con spots, el terreno más empinado a lo largo de la línea de aspersor a aspersor (porcentaje, cuesta arriba o abajo). Primero menos tendidos, luego mayor parte cubierta. Se omiten los rumbos en que no cabe ningún aspersor.",
  "#VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head at any bearing, or where spots do not reach a head.":
    "#VALUE! con un número en blanco o equivocado, vértices que son el mismo lugar, están en una recta, o tienen lados que se cruzan o tocan (nombrados por sus vértices), y con más de 500 posiciones, 1,000 tendidos o 5,000 aspersores. #N/A donde ninguna fila tiene lugar para un aspersor en ningún rumbo, o donde spots no llega a un aspersor.",
  "Spills the height of the ground at points, from spots whose height was taken.":
    "Despliega la altura del terreno en puntos, a partir de lugares de altura medida.",
  "how high is the ground between the places I measured?":
    "¿qué altura tiene el terreno entre los lugares que medí?",
  "A header row, then the height at each point, in the unit of the spots.":
    "Una fila de encabezados, luego la altura en cada punto, en la unidad de spots.",
  "#N/A where a point lies outside the triangles of the spots; it names the row. #VALUE! for a blank or wrong point or spot, spots at the same place, or spots on one line.":
    "#N/A donde un punto está fuera de los triángulos de spots; nombra la fila. #VALUE! con un punto o lugar en blanco o equivocado, lugares repetidos, o lugares en una recta.",
  "Spills the plan of a field as pairs of columns, x and y, for a native XY chart.":
    "Despliega el plano de un campo como pares de columnas, x e y, para un gráfico XY propio de la hoja.",
  "how do I draw the plan of the field?": "¿cómo dibujo el plano del campo?",
  "A header row, then 18 columns, x and y of: edge, lines, heads, change, feeders, hydrants, keep clear, frame, and lines apart, the runs beyond the first of their row. Draw edge, lines and feeders as lines without markers, the others as markers without lines (lines apart and keep clear as small dots), and the frame not at all.":
    "Una fila de encabezados, luego 18 columnas, x e y de: borde, líneas, aspersores, cambio, alimentadoras, hidrantes, lugares libres, marco, y líneas aparte: los tendidos de su fila después del primero. Dibuje borde, líneas y alimentadoras como líneas sin marcas, lo demás como marcas sin líneas (líneas aparte y lugares libres como puntos chicos), y el marco no lo dibuje.",
  "#VALUE! for a blank or wrong table, corners that bound no field, or fewer rows than a column needs; it says how many.":
    "#VALUE! con una tabla en blanco o equivocada, vértices que no encierran un campo, o menos filas de las que necesita una columna; dice cuántas.",
  "Spills the cheapest plans for a field by the year: spacing, move, sprinkler, tubing, feeder, lines.":
    "Despliega los planes más baratos por año para un campo: distancia entre aspersores, paso, aspersor, tubería, alimentadora, líneas.",
  "which spacing, sprinkler, tubing and how many lines cost least?":
    "¿qué distancia, aspersor, tubería y cuántas líneas cuestan menos?",
  "A header row, then a row for each different plan (spacing, move, sprinkler, lines), the cheapest first: what to lay, sets, hours, pressures, flow, variation, share covered, capital, the year's cost in its parts, whether it is the same as the best within 3%, and the limit without which that spacing, move and sprinkler would cost least. Money is to three digits.":
    "Una fila de encabezados, luego una fila por cada plan distinto (distancia, paso, aspersor, líneas), primero el más barato: qué tender, turnos, horas, presiones, caudal, variación, parte cubierta, capital, el costo anual por partes, si es igual al mejor dentro del 3%, y el límite sin el cual esa distancia, paso y aspersor costarían menos. El dinero va con tres cifras.",
  "#VALUE! for a blank or wrong argument or term, by name. #N/A where no row takes a head, where the choices are too many, or where no plan keeps to every limit: it names the limit without which there would be one, what that plan needs, and which others would do.":
    "#VALUE! con un argumento o término en blanco o equivocado, por su nombre. #N/A donde ninguna fila admite un aspersor, donde las opciones son demasiadas, o donde ningún plan cumple todos los límites: nombra el límite sin el cual habría uno, lo que ese plan necesita, y qué otros servirían.",
  "Spills what each limit of a plan costs: its value, what the best plan without it would need, and the saving.":
    "Despliega lo que cuesta cada límite de un plan: su valor, lo que necesitaría el mejor plan sin él, y el ahorro.",
  "what would it save to loosen a limit?": "¿cuánto ahorraría aflojar un límite?",
  "A header row, then a row a limit: its name, what it allows now, what the best plan without it comes to, that plan's cost a year, and what it saves a year against the best plan with all limits. Money is to three digits.":
    "Una fila de encabezados, luego una fila por límite: su nombre, lo que permite ahora, a lo que llega el mejor plan sin él, el costo anual de ese plan, y lo que ahorra por año frente al mejor plan con todos los límites. El dinero va con tres cifras.",
  "#VALUE! for a blank or wrong argument or term, by name. #N/A where no row takes a head, where the choices are too many, or where no plan keeps to the limits, whichever one is left out.":
    "#VALUE! con un argumento o término en blanco o equivocado, por su nombre. #N/A donde ninguna fila admite un aspersor, donde las opciones son demasiadas, o donde ningún plan cumple los límites, se quite el que se quite.",
  "Spills what a system costs a year: capital, upkeep, energy, labor and the total.":
    "Despliega lo que cuesta un sistema por año: capital, mantenimiento, energía, mano de obra y el total.",
  "what does a system cost a year?": "¿cuánto cuesta un sistema por año?",
  "Label and value, in the currency given: capital recovery, upkeep, energy, labor, total.":
    "Rótulo y valor, en la moneda dada: recuperación del capital, mantenimiento, energía, mano de obra, total.",
  "#VALUE! for a blank or negative cost, years that are not a whole number from 1 to 100, a fraction outside 0 to 1, or salvage above the capital.":
    "#VALUE! con un costo en blanco o negativo, años que no son un entero de 1 a 100, una fracción fuera de 0 a 1, o un valor de rescate mayor que el capital.",
  "Spills the bill of materials for equal lines and their feeders.":
    "Despliega la lista de materiales para líneas iguales y sus alimentadoras.",
  "what do I have to buy to build the lines?": "¿qué tengo que comprar para armar las líneas?",
  "A header row, then item, quantity and unit. Items that are not needed have no row.":
    "Una fila de encabezados, luego artículo, cantidad y unidad. Los artículos que no hacen falta no tienen fila.",
  "#VALUE! for wrong counts, lengths or text, or segments that do not add up to the heads.":
    "#VALUE! con cantidades, largos o texto equivocados, o tramos que no suman los aspersores.",
  "Spills a priced bill with subtotal, markup, tax and total.":
    "Despliega una cotización con subtotal, margen, impuesto y total.",
  "what will the lines cost?": "¿cuánto costarán las líneas?",
  "A header row, then item, quantity, unit, price and amount, and four closing rows: subtotal, markup, tax, total.":
    "Una fila de encabezados, luego artículo, cantidad, unidad, precio e importe, y cuatro filas de cierre: subtotal, margen, impuesto, total.",
  "#N/A when an item of the bill has no price, or a blank or 0 one: all of them are named. #VALUE! for wrong text or numbers, an item that is listed twice in the prices, or amounts too large to give to the cent.":
    "#N/A cuando un artículo de la lista no tiene precio, o lo tiene en blanco o 0: los nombra todos. #VALUE! con texto o números equivocados, un artículo que está dos veces en los precios, o importes demasiado grandes para darlos al centavo.",
  "Whole rolls of tubing for a length.": "Rollos enteros de tubería para un largo.",
  "how many rolls of tubing do I need?": "¿cuántos rollos de tubería necesito?",
  "Rolls, a whole number.": "Rollos, un número entero.",
  "#VALUE! for a blank, text or negative length, a roll that is not above 0, or a waste outside 0 to 1.":
    "#VALUE! con un largo en blanco, con texto o negativo, un rollo que no es mayor que 0, o un desperdicio fuera de 0 a 1.",
  'Says whether the pressure along a line varies too much: "OK", or what to change.':
    'Dice si la presión a lo largo de una línea varía demasiado: "OK", o qué cambiar.',
  "does every head get about the same?": "¿recibe cada aspersor más o menos lo mismo?",
  '"OK", or the value beside its limit, and what to change.':
    '"OK", o el valor junto a su límite, y qué cambiar.',
  "#VALUE! for a blank or text, a negative variation, or a limit above 1.":
    "#VALUE! con una celda en blanco o texto, una variación negativa, o un límite mayor que 1.",
  'Says whether the soil can take the application rate: "OK", or what to change.':
    'Dice si el suelo absorbe la intensidad de aplicación: "OK", o qué cambiar.',
  "will the water run off?": "¿escurrirá el agua?",
  "#VALUE! for a blank or text, a negative rate, or an intake that is not above 0.":
    "#VALUE! con una celda en blanco o texto, una intensidad negativa, o una infiltración que no es mayor que 0.",
  'Says whether water moves too fast in a pipe: "OK", or what to change.':
    'Dice si el agua corre demasiado rápido en una tubería: "OK", o qué cambiar.',
  "does the water move too fast?": "¿corre demasiado rápido el agua?",
  "#VALUE! for a blank, text or negative velocity or limit.":
    "#VALUE! con una velocidad o un límite en blanco, con texto o negativo.",
  'Says whether a pressure is within what a pipe may carry: "OK", or what to change.':
    'Dice si una presión está dentro de lo que puede llevar una tubería: "OK", o qué cambiar.',
  "is the pipe strong enough?": "¿es bastante fuerte la tubería?",
  "#VALUE! for a blank or text, a negative pressure, a rating that is not above 0, or a share above 1.":
    "#VALUE! con una celda en blanco o texto, una presión negativa, una presión admisible que no es mayor que 0, o una parte mayor que 1.",
  'Says whether pressure regulators can hold their set pressure along a line: "OK", or what to change.':
    'Dice si los reguladores de presión pueden mantener su presión a lo largo de una línea: "OK", o qué cambiar.',
  "do the regulators get enough pressure?": "¿reciben bastante presión los reguladores?",
  "#VALUE! for a blank, text or negative pressure, or a lowest above the highest.":
    "#VALUE! con una presión en blanco, con texto o negativa, o una menor por encima de la mayor.",
  'Says whether a pressure lies within a sprinkler\'s chart: "OK", or what to change.':
    'Dice si una presión está dentro de la tabla de un aspersor: "OK", o qué cambiar.',
  "does the sprinkler work at this pressure?": "¿trabaja bien el aspersor a esta presión?",
  "#VALUE! for a blank or text, a negative pressure, or a chart that is not two columns and at least two rows.":
    "#VALUE! con una celda en blanco o texto, una presión negativa, o una tabla que no son dos columnas y al menos dos filas.",
  'Says whether heads stand too far apart for their wetted diameter and the wind: "OK", or what to change.':
    'Dice si los aspersores están demasiado lejos para su diámetro mojado y el viento: "OK", o qué cambiar.',
  "do the heads overlap enough?": "¿se traslapan bastante los aspersores?",
  "#VALUE! for a blank, text or negative value, or a spacing, move or diameter that is not above 0.":
    "#VALUE! con un valor en blanco, con texto o negativo, o una distancia, un paso o un diámetro que no es mayor que 0.",
  'Says whether a pump gets enough suction head: "OK", or what to change.':
    'Dice si una bomba recibe bastante carga de succión: "OK", o qué cambiar.',
  "does the pump get enough suction head?": "¿recibe la bomba bastante carga de succión?",
  "#VALUE! for a blank or text, or a required head that is not above 0.":
    "#VALUE! con una celda en blanco o texto, o una carga requerida que no es mayor que 0.",
  'Says whether the pull on a line that is towed is allowable: "OK", or what to change.':
    'Dice si es admisible el tiro de una línea que se remolca: "OK", o qué cambiar.',
  "can I tow the line without tearing it?": "¿puedo remolcar la línea sin romperla?",
  "#VALUE! for a blank or text, a negative pull, or an allowable pull that is not above 0.":
    "#VALUE! con una celda en blanco o texto, un tiro negativo, o un tiro admisible que no es mayor que 0.",
};
