import type { Texts } from "../../translate";

/** What each argument is; a text that several share stands once. */
export const arguments_: Texts = {
  "Number to convert.": "Número que se convierte.",
  'Unit it is in, as text: "psi", "ft of water", "gpm", "m³/h", "acre-in", "in/h", "°F" … An unknown one gives an error that lists all.':
    'Unidad en que está, como texto: "psi", "ft of water", "gpm", "m³/h", "acre-in", "in/h", "°F" … Una desconocida da un error que las lista todas.',
  "Unit to give it in, of the same quantity.": "Unidad en que se da, de la misma magnitud.",
  "Flow in the segment (gpm, m³/h), 0 or more.": "Caudal en el tramo (gpm, m³/h), 0 o más.",
  "Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.":
    "Diámetro interior (in, mm), mayor que 0: el real, no el tamaño nominal; PIPE.INSIDE convierte uno en otro.",
  "Length of the segment (ft, m), 0 or more.": "Largo del tramo (ft, m), 0 o más.",
  '"US" (blank) or "SI".': '"US" (en blanco) o "SI".',
  'Hazen–Williams C, 50 to 200 (blank or 0: 150, clean plastic pipe without saddles and joints; 140 allows for them), or "Darcy" for Darcy–Weisbach.':
    'C de Hazen–Williams, 50 a 200 (en blanco o 0: 150, tubería de plástico limpia sin collarines ni uniones; 140 los toma en cuenta), o "Darcy" para Darcy–Weisbach.',
  "Flow in the pipe (gpm, m³/h), 0 or more.": "Caudal en la tubería (gpm, m³/h), 0 o más.",
  "Flow through the fitting (gpm, m³/h), 0 or more.":
    "Caudal por el accesorio (gpm, m³/h), 0 o más.",
  "Inside diameter (in, mm), above 0, of the pipe that k refers to.":
    "Diámetro interior (in, mm), mayor que 0, de la tubería a la que se refiere k.",
  "Resistance coefficient k of the fitting, 0 or more; several in a row add up.":
    "Coeficiente de resistencia k del accesorio, 0 o más; los de varios seguidos se suman.",
  "Length of the pipe (ft, m), 0 or more.": "Largo de la tubería (ft, m), 0 o más.",
  "Largest pressure it may lose to friction (psi, kPa), above 0.":
    "Mayor presión que puede perder por fricción (psi, kPa), mayor que 0.",
  "Inside diameters to choose from (in, mm), each above 0: one row or one column, in any order.":
    "Diámetros interiores entre los que se elige (in, mm), cada uno mayor que 0: una fila o una columna, en cualquier orden.",
  "Largest velocity (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).":
    "Mayor velocidad (ft/s, m/s), mayor que 0 (en blanco o 0: 5 ft/s, 1.5 m/s).",
  "Velocity limit (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).":
    "Límite de velocidad (ft/s, m/s), mayor que 0 (en blanco o 0: 5 ft/s, 1.5 m/s).",
  '"ISO PE" (metric), "IPS PE" (iron pipe size) or "SIDR" (controlled inside diameter).':
    '"ISO PE" (métrica), "IPS PE" (medidas de tubo de hierro) o "SIDR" (diámetro interior controlado).',
  'Size by the standard, whatever the units of the call: nominal outside diameter in mm for "ISO PE" (20 to 160), nominal inches for "IPS PE" and "SIDR" (1.25 for 1-1/4).':
    'Tamaño según la norma, sean cuales sean las unidades de la llamada: diámetro exterior nominal en mm para "ISO PE" (20 a 160), pulgadas nominales para "IPS PE" y "SIDR" (1.25 para 1-1/4).',
  'Dimension ratio of that series: SDR for "ISO PE", DR for "IPS PE", SIDR for "SIDR".':
    'Relación de dimensiones de esa serie: SDR para "ISO PE", DR para "IPS PE", SIDR para "SIDR".',
  '"US" (blank) or "SI": the unit of the result.':
    '"US" (en blanco) o "SI": la unidad del resultado.',
  "Length of the line (ft, m), 0 or more.": "Largo de la línea (ft, m), 0 o más.",
  "Change of the wall's temperature (°F, °C), a difference, not a thermometer's reading: warmer above 0, colder below, at most 360 °F or 200 °C either way.":
    "Cambio de temperatura de la pared (°F, °C), una diferencia, no una lectura del termómetro: mayor que 0 si se calienta, menor si se enfría, como máximo 360 °F o 200 °C en uno u otro sentido.",
  'Material, "PE4710", "PE3608", "PE2708", "PE100" or "PE80"; or the hydrostatic design stress as a number: HDS in psi (at most 1000), or MRS/1.25 in kPa (at most 8000: 8000 is PE100\'s, 6400 is PE80\'s).':
    'Material, "PE4710", "PE3608", "PE2708", "PE100" o "PE80"; o el esfuerzo hidrostático de diseño como número: HDS en psi (como máximo 1000), o MRS/1.25 en kPa (como máximo 8000: 8000 es el de PE100, 6400 el de PE80).',
  "Dimension ratio (SDR, DR or SIDR), 5 to 50.":
    "Relación de dimensiones (SDR, DR o SIDR), 5 a 50.",
  "Temperature of the pipe wall (°F, °C), which in sun can be well above the water's. Blank: no reduction; a blank cell may count as 0, which is no reduction either.":
    "Temperatura de la pared del tubo (°F, °C), que al sol puede ser muy superior a la del agua. En blanco: sin reducción; una celda en blanco puede contar como 0, que tampoco reduce.",
  '"ISO PE", "IPS PE" or "SIDR" (blank: that of the material; for a number "IPS PE" with US units, "ISO PE" with SI).':
    '"ISO PE", "IPS PE" o "SIDR" (en blanco: la del material; con un número, "IPS PE" en unidades US, "ISO PE" en SI).',
  "Flow that is stopped (gpm, m³/h), 0 or more.": "Caudal que se detiene (gpm, m³/h), 0 o más.",
  "Outside diameter of the pipe (in, mm), above the inside diameter.":
    "Diámetro exterior del tubo (in, mm), mayor que el interior.",
  "Inside diameter (in, mm), above 0; PIPE.INSIDE gives it.":
    "Diámetro interior (in, mm), mayor que 0; lo da PIPE.INSIDE.",
  "Length of pipe from the valve back to the pond, tank or main (ft, m), above 0. Needed with a closure time.":
    "Largo de tubería desde la válvula hacia atrás hasta el estanque, el tanque o la tubería principal (ft, m), mayor que 0. Hace falta con un tiempo de cierre.",
  "Time the valve takes to close (s), 0 or more (blank or 0: at once).":
    "Tiempo que tarda la válvula en cerrar (s), 0 o más (en blanco o 0: de golpe).",
  "Short-term modulus of the wall (psi, kPa), above 0 (blank or 0: polyethylene, 150,000 psi, which is 1,034,000 kPa).":
    "Módulo de corto plazo de la pared (psi, kPa), mayor que 0 (en blanco o 0: polietileno, 150,000 psi, que son 1,034,000 kPa).",
  "Temperature of the water (°F, °C), 32 to 212 °F or 0 to 100 °C. In °C a blank cell may count as 0.":
    "Temperatura del agua (°F, °C), 32 a 212 °F o 0 a 100 °C. En °C una celda en blanco puede contar como 0.",
  "Pressure at the nozzle (psi, kPa), 0 or more.": "Presión en la boquilla (psi, kPa), 0 o más.",
  "The sprinkler's performance chart, two columns: pressure (psi, kPa) and flow (gpm, m³/h); or one number, the coefficient K in flow = K·√pressure.":
    "Tabla de rendimiento del aspersor, dos columnas: presión (psi, kPa) y caudal (gpm, m³/h); o un solo número, el coeficiente K de caudal = K·√presión.",
  "Flow of the head (gpm, m³/h), 0 or more.": "Caudal del aspersor (gpm, m³/h), 0 o más.",
  "Nozzle diameter (in, mm), above 0.": "Diámetro de la boquilla (in, mm), mayor que 0.",
  "Discharge coefficient, above 0 and at most 1 (blank or 0: 0.96).":
    "Coeficiente de descarga, mayor que 0 y como máximo 1 (en blanco o 0: 0.96).",
  "The sprinkler's performance chart, two columns: pressure (psi, kPa) and flow (gpm, m³/h), each above 0, rows in any order.":
    "Tabla de rendimiento del aspersor, dos columnas: presión (psi, kPa) y caudal (gpm, m³/h), cada uno mayor que 0, filas en cualquier orden.",
  "Wetted diameter of the sprinkler (ft, m), above 0, from its sheet at the pressure used.":
    "Diámetro mojado del aspersor (ft, m), mayor que 0, de su ficha a la presión usada.",
  "Usual wind speed while irrigating (mph, km/h), 0 or more.":
    "Velocidad usual del viento durante el riego (mph, km/h), 0 o más.",
  "Which head, counted from the inlet: 1 to the number of heads.":
    "Qué aspersor, contado desde la entrada: de 1 al número de aspersores.",
  "Pressure where the lateral begins (psi, kPa), above 0.":
    "Presión donde empieza el lateral (psi, kPa), mayor que 0.",
  "Number of heads on the line, 1 to 500.": "Número de aspersores de la línea, 1 a 500.",
  "Distance between heads (ft, m), above 0; or a row or column with one length per segment, from the inlet to head 1 on.":
    "Distancia entre aspersores (ft, m), mayor que 0; o una fila o columna con un largo por tramo, desde la entrada al aspersor 1 en adelante.",
  "Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other. One value, one column with a value per segment, or two columns (inside diameter, number of segments) from the inlet on.":
    "Diámetro interior (in, mm), mayor que 0: el real, no el tamaño nominal; PIPE.INSIDE convierte uno en otro. Un valor, una columna con un valor por tramo, o dos columnas (diámetro interior, número de tramos) desde la entrada.",
  "Discharge of a head: the coefficient K in q = K√p (gpm and psi, m³/h and kPa), above 0; or its chart in two columns (pressure, flow), joined by power laws and extended at both ends.":
    "Descarga de un aspersor: el coeficiente K de q = K√p (gpm y psi, m³/h y kPa), mayor que 0; o su tabla en dos columnas (presión, caudal), unida con leyes de potencia y prolongada en ambos extremos.",
  "Ground above the inlet (ft, m), uphill positive: one value is that of the last head, spread evenly with distance; a row or column is each head's own. Blank or 0: level.":
    "Terreno por encima de la entrada (ft, m), positivo cuesta arriba: un valor es el del último aspersor, repartido según la distancia; una fila o columna da el de cada aspersor. En blanco o 0: a nivel.",
  "Outlet set pressure of a regulator under each head (psi, kPa), blank or 0: none. One value for all, one column with a value per head (blank: none there), or two columns (set, loss), one row for all or a row per head. The loss is 5 psi or 34.5 kPa unless given; a blank cell for it may count as 0.":
    "Presión de salida del regulador bajo cada aspersor (psi, kPa), en blanco o 0: ninguno. Un valor para todos, una columna con un valor por aspersor (en blanco: ahí no hay), o dos columnas (regulación, pérdida), una fila para todos o una por aspersor. La pérdida es 5 psi o 34.5 kPa si no se da; una celda en blanco puede contar como 0.",
  "Distance from the inlet to head 1 (ft, m), above 0 (blank or 0: the spacing). Not with a range of spacings, which holds it.":
    "Distancia de la entrada al aspersor 1 (ft, m), mayor que 0 (en blanco o 0: la distancia entre aspersores). No va con un rango de distancias, que ya la incluye.",
  "Height of the nozzle above the tubing (ft, m), 0 or more (blank: 0); its pressure is taken off before the regulator.":
    "Altura de la boquilla sobre la tubería (ft, m), 0 o más (en blanco: 0); su presión se descuenta antes del regulador.",
  "Pressure wanted at the nozzle (psi, kPa), above 0.":
    "Presión deseada en la boquilla (psi, kPa), mayor que 0.",
  '"lowest" (blank): the head with the least pressure has the target; "average": the mean of all heads; "last": the head at the far end.':
    '"lowest" (en blanco): el aspersor con menos presión recibe el objetivo; "average": la media de todos; "last": el aspersor del extremo lejano.',
  "Length from the inlet to the end of the field or the line, above 0, in any unit.":
    "Largo desde la entrada hasta el fin del campo o de la línea, mayor que 0, en cualquier unidad.",
  "Distance between heads, above 0, in the same unit.":
    "Distancia entre aspersores, mayor que 0, en la misma unidad.",
  "Distance from the inlet to head 1, above 0, in the same unit (blank or 0: the spacing).":
    "Distancia de la entrada al aspersor 1, mayor que 0, en la misma unidad (en blanco o 0: la distancia entre aspersores).",
  "Largest variation of the nozzle pressure, (highest − lowest)/average, as a fraction above 0: 0.2 for the 20% rule.":
    "Mayor variación de la presión en boquilla, (mayor − menor)/media, como fracción mayor que 0: 0.2 para la regla del 20%.",
  "Distance between heads (ft, m), above 0; or a row or column with one length per segment from the inlet on, which also is the most heads tried.":
    "Distancia entre aspersores (ft, m), mayor que 0; o una fila o columna con un largo por tramo desde la entrada, que también es el máximo de aspersores que se prueban.",
  "Inside diameter (in, mm), above 0: the bore, not the nominal size. One value; one column with a value per segment, or two columns (inside diameter, number of segments) from the inlet on, which also are the most heads tried.":
    "Diámetro interior (in, mm), mayor que 0: el real, no el tamaño nominal. Un valor; una columna con un valor por tramo, o dos columnas (diámetro interior, número de tramos) desde la entrada, que también son el máximo de aspersores que se prueban.",
  "Slope of the ground along the line (percent of the length), uphill positive (blank or 0: level).":
    "Pendiente del terreno a lo largo de la línea (porcentaje del largo), positiva cuesta arriba (en blanco o 0: a nivel).",
  "Outlet set pressure of a regulator under each head (psi, kPa), blank or 0: none. One value for all, one column with a value per head (blank: none there), or two columns (set, loss), one row for all or a row per head; rows also are the most heads tried. The loss is 5 psi or 34.5 kPa unless given; a blank cell for it may count as 0.":
    "Presión de salida del regulador bajo cada aspersor (psi, kPa), en blanco o 0: ninguno. Un valor para todos, una columna con un valor por aspersor (en blanco: ahí no hay), o dos columnas (regulación, pérdida), una fila para todos o una por aspersor; las filas también son el máximo de aspersores que se prueban. La pérdida es 5 psi o 34.5 kPa si no se da; una celda en blanco puede contar como 0.",
  "No nozzle below this pressure (psi, kPa), above 0 (blank or 0: no such limit).":
    "Ninguna boquilla bajo esta presión (psi, kPa), mayor que 0 (en blanco o 0: sin ese límite).",
  "No segment faster than this (ft/s, m/s), above 0 (blank or 0: no such limit).":
    "Ningún tramo más rápido que esto (ft/s, m/s), mayor que 0 (en blanco o 0: sin ese límite).",
  "Two columns: inside diameter (in, mm), the bore, above 0, and price per length (per ft, per m), above 0; any order.":
    "Dos columnas: diámetro interior (in, mm), el real, mayor que 0, y precio por largo (por ft, por m), mayor que 0; en cualquier orden.",
  "Number of outlets, 1 to 500.": "Número de salidas, 1 a 500.",
  "Exponent of the flow in the friction equation, above 0 and at most 3 (blank or 0: 1.852, Hazen–Williams).":
    "Exponente del caudal en la ecuación de fricción, mayor que 0 y como máximo 3 (en blanco o 0: 1.852, Hazen–Williams).",
  "Distance from the inlet to the first outlet as a share of the spacing, above 0 (blank or 0: 1; 0.5 for half a spacing).":
    "Distancia de la entrada a la primera salida como parte de la distancia entre salidas, mayor que 0 (en blanco o 0: 1; 0.5 para media distancia).",
  "Flow at the inlet (gpm, m³/h), 0 or more.": "Caudal en la entrada (gpm, m³/h), 0 o más.",
  "Length from the inlet to the last outlet (ft, m), 0 or more.":
    "Largo de la entrada a la última salida (ft, m), 0 o más.",
  "Distance from the inlet to the first outlet as a share of the spacing, above 0 (blank or 0: 1).":
    "Distancia de la entrada a la primera salida como parte de la distancia entre salidas, mayor que 0 (en blanco o 0: 1).",
  "Christiansen's uniformity at one spot, a fraction from 0 to 1.":
    "Uniformidad de Christiansen en un lugar, una fracción de 0 a 1.",
  "Lowest pressure at the heads of the line, above 0, in any unit.":
    "Menor presión en los aspersores de la línea, mayor que 0, en cualquier unidad.",
  "Average pressure at the heads, above 0, in the same unit.":
    "Presión media en los aspersores, mayor que 0, en la misma unidad.",
  "The table of FIELD.HEADS: position, run, head, along, x, y and, where the ground is not level, height (ft, m), in its order; up to 5,000 rows.":
    "La tabla de FIELD.HEADS: posición, línea, aspersor, distancia, x, y, y, donde el terreno no es plano, altura (ft, m), en su orden; hasta 5,000 filas.",
  "Distance between heads (ft, m), above 0; or a row or column with one length per segment, from the inlet to head 1 on. It must be that of the layout.":
    "Distancia entre aspersores (ft, m), mayor que 0; o una fila o columna con un largo por tramo, desde la entrada al aspersor 1 en adelante. Debe ser la del trazado.",
  "Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other. One value, one column with a value per segment, or two columns (inside diameter, number of segments) from the inlet on. They reach at least to the last head of the longest run.":
    "Diámetro interior (in, mm), mayor que 0: el real, no el tamaño nominal; PIPE.INSIDE convierte uno en otro. Un valor, una columna con un valor por tramo, o dos columnas (diámetro interior, número de tramos) desde la entrada. Llegan al menos hasta el último aspersor de la línea más larga.",
  "Distance from the inlet to head 1 (ft, m), above 0. Blank or 0: as the table of heads has it, run by run. Not with a range of spacings, which holds it.":
    "Distancia de la entrada al aspersor 1 (ft, m), mayor que 0. En blanco o 0: la que trae la tabla de aspersores, línea por línea. No va con un rango de distancias, que ya la incluye.",
  "Pressure wanted at the lowest nozzle of every run (psi, kPa), above 0. Blank or 0: not asked.":
    "Presión deseada en la boquilla más baja de cada línea (psi, kPa), mayor que 0. En blanco o 0: no se pide.",
  "Positions of the line that the feeder serves, a whole number from 1 to 500.":
    "Posiciones de la línea que atiende la alimentadora, un número entero de 1 a 500.",
  "Distance from one position to the next (any length unit), above 0.":
    "Distancia de una posición a la siguiente (en cualquier unidad de largo), mayor que 0.",
  "Distance of the hydrant from the row of the positions' near ends (same unit), 0 or more (blank: 0).":
    "Distancia del hidrante a la fila de los extremos cercanos de las posiciones (misma unidad), 0 o más (en blanco: 0).",
  "Pressure wanted where the lateral begins (psi, kPa), 0 or more.":
    "Presión deseada donde empieza el lateral (psi, kPa), 0 o más.",
  "Flow through the feeder (gpm, m³/h), 0 or more: the lateral's.":
    "Caudal por la alimentadora (gpm, m³/h), 0 o más: el del lateral.",
  "Inside diameter of the feeder (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.":
    "Diámetro interior de la alimentadora (in, mm), mayor que 0: el real, no el tamaño nominal; PIPE.INSIDE convierte uno en otro.",
  "Length of the feeder (ft, m), 0 or more.": "Largo de la alimentadora (ft, m), 0 o más.",
  "Ground from the hydrant up to the lateral's inlet (ft, m), negative downhill (blank: 0).":
    "Desnivel del hidrante hasta la entrada del lateral (ft, m), negativo cuesta abajo (en blanco: 0).",
  "Sum of the resistance coefficients k of valves, connects and bends, 0 or more (blank: 0).":
    "Suma de los coeficientes de resistencia k de válvulas, conexiones y curvas, 0 o más (en blanco: 0).",
  "Near ends of the line (any length unit): two columns, x and y, a row a position in their order; or the table of FIELD.RUNS, whose columns begin with position, run, x and y. Up to 1,000 rows.":
    "Extremos cercanos de la línea (en cualquier unidad de largo): dos columnas, x e y, una fila por posición en su orden; o la tabla de FIELD.RUNS, cuyas columnas empiezan con posición, línea, x e y. Hasta 1,000 filas.",
  "Length of the feeder that is to be enough (same unit), above 0, less what you keep as slack.":
    "Largo de alimentadora que debe bastar (misma unidad), mayor que 0, menos lo que usted deja de holgura.",
  "Hydrants (same unit): two columns, x and y; or the table of FEEDER.HYDRANTS, whose columns begin with hydrant, x and y. Up to 1,000 rows.":
    "Hidrantes (misma unidad): dos columnas, x e y; o la tabla de FEEDER.HYDRANTS, cuyas columnas empiezan con hidrante, x e y. Hasta 1,000 filas.",
  "Length of the feeder (same unit), 0 or more.":
    "Largo de la alimentadora (misma unidad), 0 o más.",
  "Corners of the field (same unit): two columns, x and y, 3 to 200 rows. Blank: not looked at.":
    "Vértices del campo (misma unidad): dos columnas, x e y, 3 a 200 filas. En blanco: no se miran.",
  "Pressure wanted at the far end, where the line is fed (psi, kPa), 0 or more.":
    "Presión deseada en el extremo lejano, donde se alimenta la línea (psi, kPa), 0 o más.",
  "Height from the water surface up to that point (ft, m), negative when it lies below the water.":
    "Altura desde la superficie del agua hasta ese punto (ft, m), negativa cuando está por debajo del agua.",
  "Friction from the water to that point, pipe, fittings, screen and valves together (psi, kPa), 0 or more; 0 is none.":
    "Fricción desde el agua hasta ese punto, con tubería, accesorios, filtro y válvulas juntos (psi, kPa), 0 o más; 0 es ninguna.",
  "Velocity of the water there (ft/s, m/s), 0 or more; blank or 0 leaves the velocity head out.":
    "Velocidad del agua ahí (ft/s, m/s), 0 o más; en blanco o 0 deja fuera la carga de velocidad.",
  "Flow (gpm, m³/h), 0 or more.": "Caudal (gpm, m³/h), 0 o más.",
  "Total dynamic head (ft, m), 0 or more.": "Carga dinámica total (ft, m), 0 o más.",
  "Efficiency of the pump as a fraction, above 0 and at most 1, as its curve shows at this flow.":
    "Eficiencia de la bomba como fracción, mayor que 0 y como máximo 1, según su curva a este caudal.",
  "Height of the pump above the water (ft, m); negative when the water stands above the pump.":
    "Altura de la bomba sobre el agua (ft, m); negativa cuando el agua está más alta que la bomba.",
  "Friction of the suction side, strainer and fittings with it, as height of water (ft, m), 0 or more.":
    "Fricción del lado de succión, con colador y accesorios, como altura de agua (ft, m), 0 o más.",
  'Water temperature, 32 to 212 °F or 0 to 100 °C; omitted: 68 °F, 20 °C. A blank cell may count as 0, which is 0 °C in "SI" and the default in "US".':
    'Temperatura del agua, 32 a 212 °F o 0 a 100 °C; si se omite: 68 °F, 20 °C. Una celda en blanco puede contar como 0, que es 0 °C en "SI" y el valor usual en "US".',
  "Height above the sea (ft, m), −16,404 to 36,089 ft or −5000 to 11,000 m; blank or 0 is the sea.":
    "Altura sobre el mar (ft, m), −16,404 a 36,089 ft o −5000 a 11,000 m; en blanco o 0 es el nivel del mar.",
  "Hours of pumping, 0 or more.": "Horas de bombeo, 0 o más.",
  '"electric", "diesel", "propane", "gasoline" or "natural gas".':
    '"electric" (eléctrico), "diesel" (diésel), "propane" (propano), "gasoline" (gasolina) o "natural gas" (gas natural).',
  "How well the pumping plant does against the published criterion, above 0 and at most 2; blank or 0: 1, as good as the criterion. 0.8 is common in the field.":
    "Qué tan bien rinde la planta de bombeo frente al criterio publicado, mayor que 0 y como máximo 2; en blanco o 0: 1, tan bien como el criterio. 0.8 es común en el campo.",
  "The pump's curve: two columns, flow (gpm, m³/h) and head (ft, m), two points or more, from the least flow up.":
    "Curva de la bomba: dos columnas, caudal (gpm, m³/h) y carga (ft, m), dos puntos o más, desde el menor caudal.",
  "The system's curve in the same two columns: the total dynamic head it asks at each flow.":
    "Curva del sistema en las mismas dos columnas: la carga dinámica total que pide a cada caudal.",
  "Two columns, flow and what the sheet gives at it, two points or more, from the least flow up; 0 or more, in the units of the sheet.":
    "Dos columnas, caudal y lo que da la ficha con él, dos puntos o más, desde el menor caudal; 0 o más, en las unidades de la ficha.",
  "Flow, in the unit of the first column, 0 or more.":
    "Caudal, en la unidad de la primera columna, 0 o más.",
  "The pump's curve: two columns, flow (gpm, m³/h) and head (ft, m), from the least flow up; it must have a point at zero flow.":
    "Curva de la bomba: dos columnas, caudal (gpm, m³/h) y carga (ft, m), desde el menor caudal; debe tener un punto con caudal cero.",
  "Height from the water surface up to the hydrant (ft, m), negative when the hydrant lies below the water.":
    "Altura desde la superficie del agua hasta el hidrante (ft, m), negativa cuando el hidrante está por debajo del agua.",
  "Fall from the hydrant down to the lowest point of the line (ft, m), 0 or more; blank or 0 is none.":
    "Bajada del hidrante hasta el punto más bajo de la línea (ft, m), 0 o más; en blanco o 0 es ninguna.",
  "The pump's curve: two columns, flow (gpm, m³/h) and head (ft, m), two points or more.":
    "Curva de la bomba: dos columnas, caudal (gpm, m³/h) y carga (ft, m), dos puntos o más.",
  "Number of lines that run at once, 1 to 100.": "Número de líneas que riegan a la vez, 1 a 100.",
  "Pipe from the pump to the hydrant, which carries all lines: two columns, inside diameter (in, mm) and length (ft, m), one row per size in series.":
    "Tubería de la bomba al hidrante, que lleva todas las líneas: dos columnas, diámetro interior (in, mm) y largo (ft, m), una fila por tamaño en serie.",
  "Pipe from the hydrant to each line, which carries that line alone: two columns, inside diameter (in, mm) and length (ft, m), one row per size in series.":
    "Tubería del hidrante a cada línea, que lleva solo esa línea: dos columnas, diámetro interior (in, mm) y largo (ft, m), una fila por tamaño en serie.",
  "Ground above the hydrant (ft, m), uphill positive: one value is that of the last head, spread evenly with distance; a row or column is each head's own. Blank or 0: level.":
    "Terreno por encima del hidrante (ft, m), positivo cuesta arriba: un valor es el del último aspersor, repartido según la distancia; una fila o columna da el de cada aspersor. En blanco o 0: a nivel.",
  "Distance from where the lateral begins to head 1 (ft, m), above 0 (blank or 0: the spacing). Not with a range of spacings, which holds it.":
    "Distancia de donde empieza el lateral al aspersor 1 (ft, m), mayor que 0 (en blanco o 0: la distancia entre aspersores). No va con un rango de distancias, que ya la incluye.",
  "Water that may be taken (US gal, m³), 0 or more: leave out what the intake cannot reach.":
    "Agua que se puede tomar (gal de EE. UU., m³), 0 o más: deje fuera lo que la toma no alcanza.",
  "Pumped flow (gpm, m³/h), above 0.": "Caudal bombeado (gpm, m³/h), mayor que 0.",
  "Hours of pumping a day, above 0 and at most 24.":
    "Horas de bombeo al día, mayor que 0 y como máximo 24.",
  "What runs in day and night, less seepage and evaporation (gpm, m³/h), 0 or more; blank or 0 is none.":
    "Lo que entra día y noche, menos filtración y evaporación (gpm, m³/h), 0 o más; en blanco o 0 es nada.",
  "Water that may be taken when it is full (US gal, m³), 0 or more: leave out what the intake cannot reach. It is full at the start and never holds more.":
    "Agua que se puede tomar cuando está lleno (gal de EE. UU., m³), 0 o más: deje fuera lo que la toma no alcanza. Está lleno al empezar y nunca contiene más.",
  "Water needed in each month (US gal, m³), 0 or more: one row or column, at most 120 months. SYSTEM.VOLUME gives one from an area and a gross depth.":
    "Agua necesaria en cada mes (gal de EE. UU., m³), 0 o más: una fila o columna, como máximo 120 meses. SYSTEM.VOLUME da una a partir de superficie y lámina bruta.",
  "What runs in each month (US gal, m³), 0 or more: one value for every month or one a month; blank or 0 is none.":
    "Lo que entra en cada mes (gal de EE. UU., m³), 0 o más: un valor para todos los meses o uno por mes; en blanco o 0 es nada.",
  "Seepage and evaporation of each month (US gal, m³), 0 or more: one value for every month or one a month; blank or 0 is none.":
    "Filtración y evaporación de cada mes (gal de EE. UU., m³), 0 o más: un valor para todos los meses o uno por mes; en blanco o 0 es nada.",
  "Flow of one head (gpm, m³/h), 0 or more.": "Caudal de un aspersor (gpm, m³/h), 0 o más.",
  "Distance between heads along the line (ft, m), above 0.":
    "Distancia entre aspersores a lo largo de la línea (ft, m), mayor que 0.",
  "Distance between positions of the line (ft, m), above 0.":
    "Distancia entre posiciones de la línea (ft, m), mayor que 0.",
  "Application rate (in/h, mm/h), 0 or more.": "Intensidad de aplicación (in/h, mm/h), 0 o más.",
  "Time, h, 0 or more.": "Tiempo, h, 0 o más.",
  "Application efficiency, a fraction above 0 up to 1 (blank or 0: 1, which gives the gross depth).":
    "Eficiencia de aplicación, una fracción mayor que 0 hasta 1 (en blanco o 0: 1, que da la lámina bruta).",
  "Water caught, mL in both unit systems, 0 or more.":
    "Agua recogida, mL en ambos sistemas de unidades, 0 o más.",
  "Diameter of the can's opening (in, mm), above 0.":
    "Diámetro de la boca del pluviómetro (in, mm), mayor que 0.",
  "Catches, a range of any shape: depths or volumes, in any one unit, from cans of one size, each standing for the same area. Empty cells are skipped; a 0 is a can that caught nothing.":
    "Lecturas, un rango de cualquier forma: láminas o volúmenes, en una sola unidad, de pluviómetros iguales, cada uno por la misma superficie. Las celdas vacías se pasan por alto; un 0 es un pluviómetro que no recogió nada.",
  "The lowest part to compare, a fraction above 0 up to 1 (blank or 0: 0.25, the low quarter; 0.5 is the low half).":
    "La parte más baja que se compara, una fracción mayor que 0 hasta 1 (en blanco o 0: 0.25, el cuarto más bajo; 0.5 es la mitad más baja).",
  "Depth caught at the head, one step out, two steps out and so on: a row or column of two or more, each 0 or more, in any unit. Straight lines between; none beyond the last, so end with the 0 where the throw ends.":
    "Lámina recogida en el aspersor, a un paso, a dos pasos y así sucesivamente: una fila o columna de dos o más, cada una 0 o más, en cualquier unidad. Entre ellas, rectas; nada después de la última, así que termine con el 0 donde acaba el alcance.",
  "Distance between two of these catches (ft, m), above 0.":
    "Distancia entre dos de estas lecturas (ft, m), mayor que 0.",
  "Distance between heads along the line, in the step's unit, above 0.":
    "Distancia entre aspersores a lo largo de la línea, en la unidad del paso, mayor que 0.",
  "Distance between positions of the line, in the step's unit, above 0.":
    "Distancia entre posiciones de la línea, en la unidad del paso, mayor que 0.",
  "Cells a side, a whole number up to 100 (blank or 0: 10).":
    "Celdas por lado, un número entero hasta 100 (en blanco o 0: 10).",
  "Catches across the line, one row or column of an odd count with the line at the middle can, each 0 or more, in any unit. Every cell needs a number: a can that was left out would shift the others.":
    "Lecturas a través de la línea, una fila o columna de número impar con la línea en el pluviómetro del medio, cada una 0 o más, en cualquier unidad. Cada celda necesita un número: un pluviómetro omitido correría los demás de lugar.",
  "Distance between two cans (ft, m), above 0.":
    "Distancia entre dos pluviómetros (ft, m), mayor que 0.",
  "Distance between positions of the line, in the step's unit: a whole number of steps, at most 500.":
    "Distancia entre posiciones de la línea, en la unidad del paso: un número entero de pasos, como máximo 500.",
  "Pressure at the nozzle (psi, kPa), above 0.": "Presión en la boquilla (psi, kPa), mayor que 0.",
  "Reference evapotranspiration (in/day, mm/day), 0 or more.":
    "Evapotranspiración de referencia (in/day, mm/day), 0 o más.",
  "Wind speed (mph, km/h), 0 or more.": "Velocidad del viento (mph, km/h), 0 o más.",
  "Coarseness index of the spray, above 0, as APPLICATION.COARSENESS gives it; held to 7 and 17.":
    "Índice de grosor de las gotas, mayor que 0, como lo da APPLICATION.COARSENESS; se mantiene entre 7 y 17.",
  "Christiansen uniformity, a fraction above 0 up to 1; APPLICATION.CU gives it.":
    "Uniformidad de Christiansen, una fracción mayor que 0 hasta 1; la da APPLICATION.CU.",
  "Share of the area that must get at least the net depth, a fraction from 0.5 to 0.95 (0.8 is common for field crops, 0.9 for high-value ones: common practice).":
    "Parte de la superficie que debe recibir al menos la lámina neta, una fracción de 0.5 a 0.95 (0.8 es común en cultivos extensivos, 0.9 en los de alto valor: práctica común).",
  "Part of the discharge that reaches the ground, a fraction above 0 up to 1, as APPLICATION.EFFECTIVE gives it (blank or 0: 1, no loss in the air).":
    "Parte de la descarga que llega al suelo, una fracción mayor que 0 hasta 1, como la da APPLICATION.EFFECTIVE (en blanco o 0: 1, sin pérdida en el aire).",
  "Net depth to put on (in, mm), 0 or more.": "Lámina neta que se aplica (in, mm), 0 o más.",
  "Application rate (in/h, mm/h), above 0.": "Intensidad de aplicación (in/h, mm/h), mayor que 0.",
  "Application efficiency, a fraction above 0 up to 1 (blank or 0: 1, nothing lost).":
    "Eficiencia de aplicación, una fracción mayor que 0 hasta 1 (en blanco o 0: 1, nada se pierde).",
  "Length of a set, h, above 0.": "Duración de un turno, h, mayor que 0.",
  "Time to drain, move and start again after a set, h, 0 or more (blank: 0).":
    "Tiempo para vaciar, mover y arrancar de nuevo después de un turno, h, 0 o más (en blanco: 0).",
  "Hours of a day there are for sets and moves, above 0 up to 24 (blank or 0: 24).":
    "Horas del día disponibles para turnos y traslados, mayor que 0 hasta 24 (en blanco o 0: 24).",
  "Width of field across the line (ft, m), above 0.":
    "Ancho del campo a través de la línea (ft, m), mayor que 0.",
  "Distance between positions, in the width's unit, above 0.":
    "Distancia entre posiciones, en la unidad del ancho, mayor que 0.",
  "Lines that run side by side, a whole number from 1 to 500.":
    "Líneas que riegan en paralelo, un número entero de 1 a 500.",
  "Positions in the field, a whole number from 1 to 500.":
    "Posiciones en el campo, un número entero de 1 a 500.",
  "Hour of the first set of a day, 0 to 24 (blank: 0, midnight).":
    "Hora del primer turno del día, 0 a 24 (en blanco: 0, medianoche).",
  '"forward" (blank), or "back": each line goes through its block from the last position to the first, as the next time round begins where this one ended.':
    '"forward" (hacia adelante; en blanco), o "back" (hacia atrás): cada línea recorre su bloque de la última posición a la primera, como cuando la vuelta siguiente empieza donde terminó esta.',
  "Days without moving in a week, a whole number from 0 to 6 (blank: 0).":
    "Días de la semana sin mover, un número entero de 0 a 6 (en blanco: 0).",
  "Area to irrigate (acre, ha), 0 or more.": "Superficie por regar (acre, ha), 0 o más.",
  "Gross depth of one irrigation (in, mm), 0 or more: the net depth divided by the efficiency.":
    "Lámina bruta de un riego (in, mm), 0 o más: la lámina neta dividida entre la eficiencia.",
  "Days to get round the area, above 0: the irrigation interval, less the days off.":
    "Días para dar la vuelta a la superficie, mayor que 0: el intervalo de riego, menos los días libres.",
  "Hours a day that water runs, above 0 up to 24.":
    "Horas al día en que corre el agua, mayor que 0 hasta 24.",
  "Net depth that an irrigation puts back (in, mm), 0 or more.":
    "Lámina neta que repone un riego (in, mm), 0 o más.",
  "Water the crop uses a day at its peak (in/day, mm/day), above 0.":
    "Agua que usa el cultivo en un día en su máximo (in/day, mm/day), mayor que 0.",
  "Positions in the field, a whole number, 1 or more; SET.POSITIONS gives it.":
    "Posiciones en el campo, un número entero, 1 o más; lo da SET.POSITIONS.",
  "Sets a line makes in a day, above 0; SET.PERDAY gives it, 0.5 for a set of two days.":
    "Turnos que hace una línea en un día, mayor que 0; lo da SET.PERDAY, 0.5 para un turno de dos días.",
  "Days to get round, above 0: the irrigation interval (SYSTEM.INTERVAL), less the days off.":
    "Días para dar la vuelta, mayor que 0: el intervalo de riego (SYSTEM.INTERVAL), menos los días libres.",
  "Area (acre, ha), 0 or more.": "Superficie (acre, ha), 0 o más.",
  "Depth (in, mm), 0 or more: gross for what is pumped, net for what the ground gets.":
    "Lámina (in, mm), 0 o más: bruta para lo que se bombea, neta para lo que recibe el suelo.",
  'Soil texture, such as "silt loam" (the remarks list them all); any case, spaces or hyphens.':
    'Textura del suelo, por ejemplo "silt loam" (las notas las listan todas); con mayúsculas, espacios o guiones cualesquiera.',
  'Soil texture of the upper soil, such as "silt loam" (the remarks list them all); any case, spaces or hyphens.':
    'Textura de la capa superior del suelo, por ejemplo "silt loam" (las notas las listan todas); con mayúsculas, espacios o guiones cualesquiera.',
  "TRUE where the soil lies over a more compact one, FALSE (blank) where it is alike to 6 ft (1.8 m); the words as text count too.":
    "TRUE donde el suelo está sobre otro más compacto, FALSE (en blanco) donde es parejo hasta 6 ft (1.8 m); las palabras como texto también valen.",
  'Profile class: "coarse sandy", "light sandy loam" or "silt loam", each alone or with "over compact" behind it, or "heavy clay". SOIL.PROFILE gives one from a texture.':
    'Clase de perfil: "coarse sandy", "light sandy loam" o "silt loam", cada una sola o seguida de "over compact", o "heavy clay". SOIL.PROFILE la da a partir de una textura.',
  "Slope of the ground, percent, 0 or more (its steepness, without a sign). 0 is flat ground.":
    "Pendiente del terreno, porcentaje, 0 o más (su inclinación, sin signo). 0 es terreno plano.",
  '"bare" ground in average tilth (blank) or a good "sod".':
    '"bare", suelo desnudo bien labrado (en blanco), o "sod", buen césped.',
  "Available water capacity (in/ft, mm/m), above 0, at most all soil (12 in/ft, 1000 mm/m); SOIL.AWC gives one.":
    "Capacidad de agua disponible (in/ft, mm/m), mayor que 0, como máximo todo el suelo (12 in/ft, 1000 mm/m); SOIL.AWC da una.",
  "Depth of the roots to water (ft, m), above 0; CROP.ROOT gives one.":
    "Profundidad de raíces que se riega (ft, m), mayor que 0; CROP.ROOT da una.",
  "Share of the available water that may be used up before the next irrigation, a fraction above 0 up to 1; CROP.DEPLETION gives one.":
    "Parte del agua disponible que se puede gastar antes del riego siguiente, una fracción mayor que 0 hasta 1; CROP.DEPLETION da una.",
  "Rain of the month (in, mm), 0 or more: an average, or better that of a dry year.":
    "Lluvia del mes (in, mm), 0 o más: un promedio, o mejor la de un año seco.",
  "Water that the crop uses in the month (in, mm), 0 to 31 in or 775 mm; 0 is a month without a crop.":
    "Agua que usa el cultivo en el mes (in, mm), 0 a 31 in o 775 mm; 0 es un mes sin cultivo.",
  "Net depth of an irrigation (in, mm), above 0: the room that rain finds in the soil; SOIL.NET gives it.":
    "Lámina neta de un riego (in, mm), mayor que 0: el lugar que la lluvia encuentra en el suelo; la da SOIL.NET.",
  'A crop, such as "alfalfa hay" or "rotated pasture" (the remarks list them all); any case, spaces or hyphens.':
    'Un cultivo, por ejemplo "alfalfa hay" o "rotated pasture" (las notas los listan todos); con mayúsculas, espacios o guiones cualesquiera.',
  'Of the argument et: "US" (blank) or "SI".': 'Del argumento et: "US" (en blanco) o "SI".',
  "The crop's evapotranspiration in its thirstiest time (in/day, mm/day), up to 1 in or 25 mm a day. Blank or 0: the fraction as published, which is for 5 mm (0.2 in) a day.":
    "Evapotranspiración del cultivo en su época de más sed (in/day, mm/day), hasta 1 in o 25 mm al día. En blanco o 0: la fracción publicada, que vale para 5 mm (0.2 in) al día.",
  'Stage of growth: "initial", "mid" or "end".':
    'Etapa de crecimiento: "initial" (inicial), "mid" (media) o "end" (final).',
  "Lowest air temperature of the day (°F, °C), −58 to 140 °F or −50 to 60 °C, not above tmax. A blank cell may count as 0.":
    "Temperatura mínima del aire en el día (°F, °C), −58 a 140 °F o −50 a 60 °C, no mayor que tmax. Una celda en blanco puede contar como 0.",
  "Highest air temperature of the day (°F, °C). A blank cell may count as 0.":
    "Temperatura máxima del aire en el día (°F, °C). Una celda en blanco puede contar como 0.",
  "Mean dew point of the day (°F, °C), not above tmax; ET.DEWPOINT makes one from humidity. A blank cell may count as 0.":
    "Punto de rocío medio del día (°F, °C), no mayor que tmax; ET.DEWPOINT lo saca de la humedad. Una celda en blanco puede contar como 0.",
  "Mean wind speed 2 m (6.6 ft) above the ground (mph, km/h), 0 to 200; ET.WIND2M brings one from another height. 0 is no wind.":
    "Velocidad media del viento a 2 m (6.6 ft) del suelo (mph, km/h), 0 a 200; ET.WIND2M la trae de otra altura. 0 es sin viento.",
  "Solar radiation of the day (MJ/m²/day in both systems), above 0, at most what ET.RADIATION gives; ET.SOLAR makes one from sunshine hours.":
    "Radiación solar del día (MJ/m²/day en ambos sistemas), mayor que 0, como máximo lo que da ET.RADIATION; ET.SOLAR la saca de las horas de sol.",
  "Decimal degrees, north positive, south negative. A blank cell may count as 0, the equator.":
    "Grados decimales, norte positivo, sur negativo. Una celda en blanco puede contar como 0, el ecuador.",
  "Height above the sea (ft, m), −1500 to 20000 ft or −450 to 6000 m. 0 is sea level.":
    "Altura sobre el mar (ft, m), −1500 a 20000 ft o −450 a 6000 m. 0 es el nivel del mar.",
  "Day of the year, a whole number from 1 to 366; for a date in A1, =A1-DATE(YEAR(A1),1,0).":
    "Día del año, un número entero de 1 a 366; para una fecha en A1, =A1-DATE(YEAR(A1),1,0).",
  "Lowest relative humidity of the day, a fraction from 0 to 1, not above rhmax.":
    "Humedad relativa mínima del día, una fracción de 0 a 1, no mayor que rhmax.",
  "Highest relative humidity of the day, a fraction above 0 up to 1.":
    "Humedad relativa máxima del día, una fracción mayor que 0 hasta 1.",
  "Wind speed as measured (mph, km/h), 0 to 200. 0 is no wind.":
    "Velocidad del viento como se midió (mph, km/h), 0 a 200. 0 es sin viento.",
  "Height of the anemometer above short grass (ft, m), 1 to 330 ft or 0.3 to 100 m; weather stations mostly have 33 ft or 10 m.":
    "Altura del anemómetro sobre césped corto (ft, m), 1 a 330 ft o 0.3 a 100 m; las estaciones suelen tener 33 ft o 10 m.",
  "Hours of bright sunshine, from 0 to the length of the day. A blank cell may count as 0, an overcast day.":
    "Horas de sol brillante, de 0 a la duración del día. Una celda en blanco puede contar como 0, un día nublado.",
  "Use of the crop in its peak month (in, mm), 0 to 31 in or 775 mm: reference evapotranspiration of the whole month times CROP.KC.":
    "Uso del cultivo en su mes de máximo (in, mm), 0 a 31 in o 775 mm: evapotranspiración de referencia de todo el mes por CROP.KC.",
  "Net depth of an irrigation (in, mm), above 0; SOIL.NET gives it.":
    "Lámina neta de un riego (in, mm), mayor que 0; la da SOIL.NET.",
  "Inside diameter at the far end (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.":
    "Diámetro interior en el extremo lejano (in, mm), mayor que 0: el real, no el tamaño nominal; PIPE.INSIDE convierte uno en otro.",
  "Speed of the water (ft/s, m/s), above 0; blank or 0: 2 ft/s, 0.6 m/s.":
    "Velocidad del agua (ft/s, m/s), mayor que 0; en blanco o 0: 2 ft/s, 0.6 m/s.",
  "Speed of the water in the last segment (ft/s, m/s), above 0; 2 ft/s or 0.6 m/s is the usual least.":
    "Velocidad del agua en el último tramo (ft/s, m/s), mayor que 0; 2 ft/s o 0.6 m/s es la mínima usual.",
  "Flow through the line and out of its open end (gpm, m³/h), above 0.":
    "Caudal que pasa por la línea y sale por su extremo abierto (gpm, m³/h), mayor que 0.",
  "Inside diameter (in, mm), above 0: one value, or a row or column with one per section. The bore, not the nominal size.":
    "Diámetro interior (in, mm), mayor que 0: un valor, o una fila o columna con uno por sección. El real, no el tamaño nominal.",
  "Length of tubing (ft, m), 0 or more: as many values as inside diameters, in the same order.":
    "Largo de tubería (ft, m), 0 o más: tantos valores como diámetros interiores, en el mismo orden.",
  "How many times the water is changed, above 0; blank or 0 is once.":
    "Cuántas veces se cambia el agua, mayor que 0; en blanco o 0 es una vez.",
  "Inside diameter (in, mm), above 0: one value, or a row or column with one per section. The bore, not the nominal size; PIPE.INSIDE turns one into the other.":
    "Diámetro interior (in, mm), mayor que 0: un valor, o una fila o columna con uno por sección. El real, no el tamaño nominal; PIPE.INSIDE convierte uno en otro.",
  "Distance along the line of each point where the ground's height is known (ft, m): a row or column of two values or more that rise; the first may be 0.":
    "Distancia a lo largo de la línea de cada punto cuya altura se conoce (ft, m): una fila o columna de dos valores o más que aumentan; el primero puede ser 0.",
  "Height of the ground at each point (ft, m), above any level you like: as many values.":
    "Altura del terreno en cada punto (ft, m), sobre el nivel que usted quiera: la misma cantidad de valores.",
  "Inside diameter (in, mm), above 0: one value, one per run between two points, or two columns (inside diameter, number of runs).":
    "Diámetro interior (in, mm), mayor que 0: un valor, uno por tramo entre dos puntos, o dos columnas (diámetro interior, número de tramos).",
  'Which ends are open: "both" (blank), "start" or "end".':
    'Qué extremos están abiertos: "both" (ambos; en blanco), "start" (el inicio) o "end" (el final).',
  "Length of the line (ft, m), above 0.": "Largo de la línea (ft, m), mayor que 0.",
  "How much lower the open end lies than the top (ft, m), above 0 and at most the length.":
    "Cuánto más bajo está el extremo abierto que la parte alta (ft, m), mayor que 0 y como máximo el largo.",
  "Diameter of the hole or valve it runs out of (in, mm), above 0 and at most the inside diameter; blank or 0: the whole end is open.":
    "Diámetro del agujero o de la válvula por donde sale (in, mm), mayor que 0 y como máximo el diámetro interior; en blanco o 0: todo el extremo está abierto.",
  'Hazen–Williams C, 50 to 200 (blank or 0: 150), or "Darcy" for Darcy–Weisbach.':
    'C de Hazen–Williams, 50 a 200 (en blanco o 0: 150), o "Darcy" para Darcy–Weisbach.',
  "Outside diameter of the tubing (in, mm), above 0: one value, or a row or column with one per section.":
    "Diámetro exterior de la tubería (in, mm), mayor que 0: un valor, o una fila o columna con uno por sección.",
  "Inside diameter (in, mm), above 0 and below the outside one: as many values.":
    "Diámetro interior (in, mm), mayor que 0 y menor que el exterior: la misma cantidad de valores.",
  "Length of tubing (ft, m), 0 or more: as many values.":
    "Largo de tubería (ft, m), 0 o más: la misma cantidad de valores.",
  "Heads on the line, a whole number from 0 to 500.":
    "Aspersores en la línea, un número entero de 0 a 500.",
  "Weight of one head with its stand and saddle (lb, kg), 0 or more.":
    "Peso de un aspersor con su soporte y su collarín (lb, kg), 0 o más.",
  '"full" of water (blank) or "drained".':
    '"full", llena de agua (en blanco), o "drained", vaciada.',
  "Weight of the line (lb, kg), 0 or more, as TOW.WEIGHT gives it.":
    "Peso de la línea (lb, kg), 0 o más, como lo da TOW.WEIGHT.",
  "Drag coefficient on this ground, 0 to 3: the pull on the level over the weight. Measure it with a scale in the tow rope; 0.3 to 0.6 is common on grass.":
    "Coeficiente de arrastre en este terreno, 0 a 3: el tiro a nivel dividido entre el peso. Mídalo con una balanza en la cuerda de remolque; 0.3 a 0.6 es común en pasto.",
  "Slope in the direction of the pull, percent, uphill positive, −100 to 100; blank or 0 is level.":
    "Pendiente en la dirección del tiro, porcentaje, positiva cuesta arriba, −100 a 100; en blanco o 0 es a nivel.",
  "Outside diameter of the smallest tubing on the line (in, mm), above 0.":
    "Diámetro exterior de la tubería más chica de la línea (in, mm), mayor que 0.",
  "Dimension ratio, outside diameter over wall (DR or SDR), above 2; for SIDR tubing add 2.":
    "Relación de dimensiones, diámetro exterior entre pared (DR o SDR), mayor que 2; para tubería SIDR sume 2.",
  "Tensile yield strength of the material at 73 °F or 23 °C (psi, kPa), above 0, from the manufacturer: it differs between grades, so there is no default.":
    "Resistencia a la fluencia en tracción del material a 73 °F o 23 °C (psi, kPa), mayor que 0, del fabricante: cambia según el grado, así que no hay valor por omisión.",
  "Temperature of the tubing's wall (°F, °C); black tubing in the sun is far above the air. Blank (a blank cell may count as 0), or anything below 73 °F or 23 °C, is no reduction.":
    "Temperatura de la pared del tubo (°F, °C); la tubería negra al sol está mucho más caliente que el aire. En blanco (una celda en blanco puede contar como 0), o cualquier valor bajo 73 °F o 23 °C, es sin reducción.",
  "How long the pull lasts, above 0; blank or 0: 60. Above 24 hours #N/A.":
    "Cuánto dura el tiro, mayor que 0; en blanco o 0: 60. Más de 24 horas da #N/A.",
  "Pull that the weakest joint has been tested for (lbf, N), above 0; blank or 0: joints not counted.":
    "Tiro para el que se probó la unión más débil (lbf, N), mayor que 0; en blanco o 0: no se cuentan las uniones.",
  "Outside diameter (any unit of length), above 0.":
    "Diámetro exterior (en cualquier unidad de largo), mayor que 0.",
  "Dimension ratio, outside diameter over wall (DR or SDR), 11 to 26; for SIDR tubing add 2.":
    "Relación de dimensiones, diámetro exterior entre pared (DR o SDR), 11 a 26; para tubería SIDR sume 2.",
  "TRUE where a saddle, a coupler or any other fitting lies in the bend; FALSE (blank) for plain tubing.":
    "TRUE donde hay un collarín, una unión u otro accesorio en la curva; FALSE (en blanco) para tubería lisa.",
  "Heads on the line, a whole number from 1 to 500.":
    "Aspersores en la línea, un número entero de 1 a 500.",
  "Distance between heads (ft, m), above 0: one value, or a row or column with one per segment from the inlet end on.":
    "Distancia entre aspersores (ft, m), mayor que 0: un valor, o una fila o columna con uno por tramo desde el extremo de entrada.",
  "Distance from the inlet end to head 1 (ft, m), above 0; blank or 0: the spacing.":
    "Distancia del extremo de entrada al aspersor 1 (ft, m), mayor que 0; en blanco o 0: la distancia entre aspersores.",
  "Latitude of the inlet end, decimal degrees, north positive. Latitude and longitude both blank or 0: distances only.":
    "Latitud del extremo de entrada, grados decimales, norte positivo. Latitud y longitud en blanco o 0: solo distancias.",
  "Longitude of the inlet end, decimal degrees, east positive.":
    "Longitud del extremo de entrada, grados decimales, este positivo.",
  "Direction of the line, degrees clockwise from true north, −360 to 360; needed with a latitude and longitude. A blank cell may count as 0, due north.":
    "Dirección de la línea, grados en el sentido del reloj desde el norte verdadero, −360 a 360; hace falta con latitud y longitud. Una celda en blanco puede contar como 0, hacia el norte.",
  "Positions that the line moves through, a whole number from 1 to 500.":
    "Posiciones por las que pasa la línea, un número entero de 1 a 500.",
  "Distance between positions (ft, m), above 0.":
    "Distancia entre posiciones (ft, m), mayor que 0.",
  "Length of the line (ft, m), above 0; blank or 0: flags for the near ends only.":
    "Largo de la línea (ft, m), mayor que 0; en blanco o 0: banderas solo para los extremos cercanos.",
  "Latitude of the near end of position 1, decimal degrees, north positive. Latitude and longitude both blank or 0: distances only.":
    "Latitud del extremo cercano de la posición 1, grados decimales, norte positivo. Latitud y longitud en blanco o 0: solo distancias.",
  "Longitude of the near end of position 1, decimal degrees, east positive.":
    "Longitud del extremo cercano de la posición 1, grados decimales, este positivo.",
  "Direction in which the positions advance, degrees clockwise from true north, −360 to 360; the line lies 90° to its right. Needed with a latitude and longitude. A blank cell may count as 0, due north.":
    "Dirección en que avanzan las posiciones, grados en el sentido del reloj desde el norte verdadero, −360 a 360; la línea queda 90° a su derecha. Hace falta con latitud y longitud. Una celda en blanco puede contar como 0, hacia el norte.",
  "Flags: three columns, name (text or a number), x east and y north of the origin (ft, m), 1 to 5,000 rows.":
    "Banderas: tres columnas, nombre (texto o número), x al este e y al norte del origen (ft, m), 1 a 5,000 filas.",
  '"GPX" for receivers, "KML" or "GeoJSON" for maps.':
    '"GPX" para receptores, "KML" o "GeoJSON" para mapas.',
  "Latitude of the origin, decimal degrees, −90 to 90.":
    "Latitud del origen, grados decimales, −90 a 90.",
  "Longitude of the origin, decimal degrees, −180 to 180.":
    "Longitud del origen, grados decimales, −180 a 180.",
  "Places: two columns, latitude and longitude in decimal degrees, north and east positive, 1 to 5,000 rows.":
    "Lugares: dos columnas, latitud y longitud en grados decimales, norte y este positivos, 1 a 5,000 filas.",
  "Places: two columns, x east and y north of the origin (ft, m), 1 to 5,000 rows.":
    "Lugares: dos columnas, x al este e y al norte del origen (ft, m), 1 a 5,000 filas.",
  "Corners of the field in the order of its edges, either way round: two columns, x east and y north (ft, m), 3 to 200 rows. (0, 0) is a corner; the first may be given again at the end.":
    "Vértices del campo en el orden de sus lados, en uno u otro sentido: dos columnas, x al este e y al norte (ft, m), 3 a 200 filas. (0, 0) es un vértice; el primero se puede repetir al final.",
  "Bearing of the line from its near end, degrees clockwise from true north, −360 to 360; positions advance to its left. A blank cell may count as 0, due north.":
    "Rumbo de la línea desde su extremo cercano, grados en el sentido del reloj desde el norte verdadero, −360 a 360; las posiciones avanzan a su izquierda. Una celda en blanco puede contar como 0, hacia el norte.",
  "Distance between heads (ft, m), above 0.": "Distancia entre aspersores (ft, m), mayor que 0.",
  "Distance from one position to the next (ft, m), above 0.":
    "Distancia de una posición a la siguiente (ft, m), mayor que 0.",
  "Distance from where the row enters the field, or leaves an obstacle, to head 1 (ft, m), above 0 (blank or 0: half the spacing). Where the setback keeps the line farther in, head 1 stands at its near end.":
    "Distancia desde donde la fila entra al campo, o deja un obstáculo, al aspersor 1 (ft, m), mayor que 0 (en blanco o 0: media distancia entre aspersores). Donde el retiro mantiene la línea más adentro, el aspersor 1 está en su extremo cercano.",
  "Least distance of line and heads from every edge (ft, m), 0 or more (blank: 0).":
    "Menor distancia de la línea y los aspersores a todo borde (ft, m), 0 o más (en blanco: 0).",
  "Circles that line and heads keep out of: three columns, x, y and radius (ft, m), up to 50 rows. Blank: none.":
    "Círculos donde no entran la línea ni los aspersores: tres columnas, x, y, y radio (ft, m), hasta 50 filas. En blanco: ninguno.",
  "Most heads on the line, a whole number from 1 to 500 (blank or 0: 500).":
    "Máximo de aspersores en la línea, un número entero de 1 a 500 (en blanco o 0: 500).",
  "Distance of the first row from the nearest corner across (ft, m), above 0. Blank or 0: as many rows as moves fit across, rounded, in the middle of the field.":
    "Distancia de la primera fila al vértice más cercano de través (ft, m), mayor que 0. En blanco o 0: tantas filas como posiciones caben a lo ancho, redondeadas, centradas en el campo.",
  "Heights of the ground: three columns, x, y and height (ft, m), 3 to 100 rows, reaching beyond the line on every side. Blank: none.":
    "Alturas del terreno: tres columnas, x, y, y altura (ft, m), 3 a 100 filas, que pasen más allá de la línea por todos lados. En blanco: ninguna.",
  "From one bearing to the next, degrees, 1 to 90 (blank or 0: 5).":
    "De un rumbo al siguiente, grados, 1 a 90 (en blanco o 0: 5).",
  "Places: two columns, x and y (any length unit), 1 to 5,000 rows.":
    "Lugares: dos columnas, x e y (en cualquier unidad de largo), 1 a 5,000 filas.",
  "Heights of the ground: three columns, x, y and height (same unit), 3 to 100 rows.":
    "Alturas del terreno: tres columnas, x, y, y altura (misma unidad), 3 a 100 filas.",
  "The table of FIELD.HEADS: position, run, head, along, x, y and maybe height (any length unit), in its order; up to 5,000 rows.":
    "La tabla de FIELD.HEADS: posición, línea, aspersor, distancia, x, y, y quizás altura (en cualquier unidad de largo), en su orden; hasta 5,000 filas.",
  "Corners of the field (same unit): two columns, x and y, 3 to 200 rows.":
    "Vértices del campo (misma unidad): dos columnas, x e y, 3 a 200 filas.",
  "Head at which the tubing changes to a smaller size: the segments laid in the larger, 1 to 500. Blank or 0: none shown.":
    "Aspersor en que la tubería cambia a un tamaño menor: los tramos tendidos en la mayor, 1 a 500. En blanco o 0: no se muestra.",
  "Hydrants (same unit): two columns, x and y; or the table of FEEDER.HYDRANTS. Blank: none shown.":
    "Hidrantes (misma unidad): dos columnas, x e y; o la tabla de FEEDER.HYDRANTS. En blanco: no se muestran.",
  "Circles that are kept clear (same unit): three columns, x, y and radius, up to 50 rows. Blank: none shown.":
    "Círculos que quedan libres (misma unidad): tres columnas, x, y, y radio, hasta 50 filas. En blanco: no se muestran.",
  "Rows that every column is padded to with its last point, 2 to 5000 (blank or 0: 300).":
    "Filas hasta las que se completa cada columna con su último punto, 2 a 5000 (en blanco o 0: 300).",
  "One row, length along the line and width across it (ft, m); or the corners of the field, two columns, x and y, 3 to 200 rows.":
    "Una fila, largo a lo largo de la línea y ancho a través de ella (ft, m); o los vértices del campo, dos columnas, x e y, 3 a 200 filas.",
  "Head spacings to choose from (ft, m), above 0, up to 25.":
    "Distancias entre aspersores entre las que se elige (ft, m), mayores que 0, hasta 25.",
  "Distances between positions to choose from (ft, m), above 0, up to 25.":
    "Distancias entre posiciones entre las que se elige (ft, m), mayores que 0, hasta 25.",
  "Pressures at the lowest nozzle to choose from (psi, kPa), above 0, up to 25.":
    "Presiones en la boquilla más baja entre las que se elige (psi, kPa), mayores que 0, hasta 25.",
  "Four columns, name, pressure (psi, kPa), flow (gpm, m³/h) and wetted diameter (ft, m); a chart's rows under one name, up to 25 names. One row alone gives no range of pressures.":
    "Cuatro columnas: nombre, presión (psi, kPa), caudal (gpm, m³/h) y diámetro mojado (ft, m); las filas de una tabla bajo un mismo nombre, hasta 25 nombres. Una sola fila no da intervalo de presiones.",
  "Sizes for the line, four columns: size, inside diameter (in, mm), price per length (ft, m) and pressure rating (psi, kPa); up to 25. A plan has two of them at most.":
    "Tamaños para la línea, cuatro columnas: tamaño, diámetro interior (in, mm), precio por largo (ft, m) y presión admisible (psi, kPa); hasta 25. Un plan tiene como máximo dos de ellos.",
  "Sizes for the feeder, the same four columns, up to 25.":
    "Tamaños para la alimentadora, las mismas cuatro columnas, hasta 25.",
  "Two columns, name and value, in any order: see the remarks. Names not known, given twice or lacking are named.":
    "Dos columnas, nombre y valor, en cualquier orden: vea las notas. Se nombran los que no se conocen, los repetidos y los que faltan.",
  "Plans to show, 1 to 20 (blank or 0: 5).": "Planes que se muestran, 1 a 20 (en blanco o 0: 5).",
  "Circles to keep clear (ft, m): three columns, x, y and radius, up to 50 rows. Blank: none.":
    "Círculos que quedan libres (ft, m): tres columnas, x, y, y radio, hasta 50 filas. En blanco: ninguno.",
  "Ground heights (ft, m): three columns, x, y and height, 3 to 100 rows around all lines. Blank: the slope of the terms.":
    "Alturas del terreno (ft, m): tres columnas, x, y, y altura, 3 a 100 filas alrededor de todas las líneas. En blanco: la pendiente de los términos.",
  "Four columns, name, pressure (psi, kPa), flow (gpm, m³/h) and wetted diameter (ft, m); a chart's rows under one name, up to 25 names.":
    "Cuatro columnas: nombre, presión (psi, kPa), caudal (gpm, m³/h) y diámetro mojado (ft, m); las filas de una tabla bajo un mismo nombre, hasta 25 nombres.",
  "Sizes for the line, four columns: size, inside diameter (in, mm), price per length (ft, m) and pressure rating (psi, kPa); up to 25.":
    "Tamaños para la línea, cuatro columnas: tamaño, diámetro interior (in, mm), precio por largo (ft, m) y presión admisible (psi, kPa); hasta 25.",
  "Two columns, name and value, in any order, as PLAN.SEARCH takes them.":
    "Dos columnas, nombre y valor, en cualquier orden, como las toma PLAN.SEARCH.",
  "What is spent at the start (any currency), 0 or more.":
    "Lo que se gasta al comienzo (en cualquier moneda), 0 o más.",
  "Years that it lasts, a whole number from 1 to 100.":
    "Años que dura, un número entero de 1 a 100.",
  "Interest a year, a fraction from 0 to 1.": "Interés por año, una fracción de 0 a 1.",
  "What it still brings at the end, from 0 (blank) to the capital.":
    "Lo que aún vale al final, de 0 (en blanco) al capital.",
  "Upkeep a year as a share of the capital, a fraction (blank: 0).":
    "Mantenimiento por año como parte del capital, una fracción (en blanco: 0).",
  "Energy of the first year, 0 or more (blank: 0).":
    "Energía del primer año, 0 o más (en blanco: 0).",
  "How much dearer energy gets each year, a fraction from 0 (blank) to 1.":
    "Cuánto se encarece la energía cada año, una fracción de 0 (en blanco) a 1.",
  "Labor a year, 0 or more (blank: 0).": "Mano de obra por año, 0 o más (en blanco: 0).",
  "Lines to build, a whole number from 1 to 500.":
    "Líneas por construir, un número entero de 1 a 500.",
  "Heads on each line, a whole number from 1 to 500.":
    "Aspersores en cada línea, un número entero de 1 a 500.",
  "Distance between heads (ft, m), above 0: one value, or a row or column with one per segment from the inlet on.":
    "Distancia entre aspersores (ft, m), mayor que 0: un valor, o una fila o columna con uno por tramo desde la entrada.",
  "Sizes from the inlet on: two columns, size as text and number of segments; the segments add up to the heads.":
    "Tamaños desde la entrada: dos columnas, tamaño como texto y número de tramos; los tramos suman los aspersores.",
  "Feeder of each line, from the hydrant on: one or more rows of size as text and length (ft, m).":
    "Alimentadora de cada línea, desde el hidrante: una o más filas de tamaño como texto y largo (ft, m).",
  "Distance from the inlet to head 1 (ft, m), above 0; blank or 0: the spacing.":
    "Distancia de la entrada al aspersor 1 (ft, m), mayor que 0; en blanco o 0: la distancia entre aspersores.",
  "TRUE for a regulator under every head; FALSE or blank for none.":
    "TRUE para un regulador bajo cada aspersor; FALSE o en blanco para ninguno.",
  "Length of a roll (ft, m), above 0: tubing is then counted in whole rolls. Blank or 0: tubing by length.":
    "Largo de un rollo (ft, m), mayor que 0: la tubería se cuenta entonces en rollos enteros. En blanco o 0: tubería por largo.",
  "Tubing beyond the last head of each line, for the cap (ft, m), 0 or more; blank or 0 is none.":
    "Tubería después del último aspersor de cada línea, para el tapón (ft, m), 0 o más; en blanco o 0 es nada.",
  "Two or three columns: item, quantity (0 or more) and, if you like, unit, as BILL.MATERIALS gives them. A first row of headers and blank rows are passed over.":
    "Dos o tres columnas: artículo, cantidad (0 o más) y, si quiere, unidad, como las da BILL.MATERIALS. Una primera fila de encabezados y las filas en blanco se pasan por alto.",
  "Two columns: item and price of one unit. Capitals and spaces tell no items apart; an item stands once. A first row of headers is passed over.":
    "Dos columnas: artículo y precio de una unidad. Mayúsculas y espacios no distinguen artículos; cada artículo está una vez. Una primera fila de encabezados se pasa por alto.",
  "Markup on the subtotal, a fraction, 0 or more (0.15 is 15%); blank or 0 is none.":
    "Margen sobre el subtotal, una fracción, 0 o más (0.15 es 15%); en blanco o 0 es ninguno.",
  "Tax on subtotal and markup, a fraction, 0 or more; blank or 0 is none.":
    "Impuesto sobre subtotal y margen, una fracción, 0 o más; en blanco o 0 es ninguno.",
  "Length needed (ft or m), 0 or more.": "Largo necesario (ft o m), 0 o más.",
  "Length of a roll in the same unit, above 0.":
    "Largo de un rollo en la misma unidad, mayor que 0.",
  "More for waste, a fraction from 0 to 1 (0.05 is 5%); blank or 0 is none.":
    "Más por desperdicio, una fracción de 0 a 1 (0.05 es 5%); en blanco o 0 es nada.",
  "Pressure variation, a fraction, 0 or more; LATERAL.VARIATION gives it.":
    "Variación de presión, una fracción, 0 o más; la da LATERAL.VARIATION.",
  "Largest variation, a fraction above 0 up to 1 (blank or 0: 0.2).":
    "Mayor variación, una fracción mayor que 0 hasta 1 (en blanco o 0: 0.2).",
  "Application rate (in/h, mm/h), 0 or more; APPLICATION.RATE gives it.":
    "Intensidad de aplicación (in/h, mm/h), 0 o más; la da APPLICATION.RATE.",
  "Largest rate for the soil and slope, in the same unit, above 0; SOIL.INTAKE gives it.":
    "Mayor intensidad para el suelo y la pendiente, en la misma unidad, mayor que 0; la da SOIL.INTAKE.",
  "Velocity of the water (ft/s, m/s), 0 or more; PIPE.VELOCITY gives it.":
    "Velocidad del agua (ft/s, m/s), 0 o más; la da PIPE.VELOCITY.",
  "Highest static pressure, with the valves shut and the pump running, at the lowest point of the line (psi, kPa), 0 or more; PUMP.STATIC gives it.":
    "Mayor presión estática, con las válvulas cerradas y la bomba en marcha, en el punto más bajo de la línea (psi, kPa), 0 o más; la da PUMP.STATIC.",
  "Pressure rating of the weakest part, in the same unit, above 0: as marked on it, or PIPE.RATING at the pipe's temperature.":
    "Presión admisible de la pieza más débil, en la misma unidad, mayor que 0: la marcada en ella, o PIPE.RATING a la temperatura del tubo.",
  "Share of the rating that the pressure may reach, a fraction above 0 up to 1 (blank or 0: 0.72, where surge has not been analyzed).":
    "Parte de la presión admisible a la que se puede llegar, una fracción mayor que 0 hasta 1 (en blanco o 0: 0.72, donde no se ha analizado el golpe de ariete).",
  "Lowest pressure under a regulator while the line runs (psi, kPa), 0 or more: that in the line less the height of the riser, as LATERAL.SUMMARY gives it; not the pressure at the nozzle, which the regulator has already lowered.":
    "Menor presión bajo un regulador mientras corre la línea (psi, kPa), 0 o más: la de la línea menos la altura del elevador, como la da LATERAL.SUMMARY; no la presión en la boquilla, que el regulador ya bajó.",
  "Highest line pressure (psi, kPa), not below the lowest: LATERAL.SUMMARY gives it while the line runs, PUMP.STATIC with the valves shut, which can be more.":
    "Mayor presión en la línea (psi, kPa), no menor que lowest: LATERAL.SUMMARY la da mientras corre la línea, PUMP.STATIC con las válvulas cerradas, que puede ser más.",
  "Outlet set pressure of the regulators (psi, kPa), above 0.":
    "Presión de salida de los reguladores (psi, kPa), mayor que 0.",
  "Pressure the regulator itself takes (psi, kPa), 0 or more. Left out or empty text: 5 psi, 34.5 kPa; a blank cell may count as 0.":
    "Presión que toma el propio regulador (psi, kPa), 0 o más. Omitida o texto vacío: 5 psi, 34.5 kPa; una celda en blanco puede contar como 0.",
  "Highest pressure the regulator is made for (psi, kPa), above 0 (blank or 0: none).":
    "Mayor presión para la que está hecho el regulador (psi, kPa), mayor que 0 (en blanco o 0: ninguna).",
  "The sprinkler's chart, two columns *(pressure, flow)* and two rows or more, with pressures in the same unit.":
    "Tabla del aspersor, dos columnas *(presión, caudal)* y dos filas o más, con presiones en la misma unidad.",
  "Wetted diameter of a head (ft, m), above 0: twice its throw at the working pressure.":
    "Diámetro mojado de un aspersor (ft, m), mayor que 0: el doble de su alcance a la presión de trabajo.",
  "Wind speed while the line runs (mph, km/h), 0 or more.":
    "Velocidad del viento mientras corre la línea (mph, km/h), 0 o más.",
  "Net positive suction head available (ft, m), any number; PUMP.NPSH gives it.":
    "Carga neta positiva de succión disponible (ft, m), cualquier número; la da PUMP.NPSH.",
  "Net positive suction head the pump requires at its flow, from its curve, in the same unit, above 0.":
    "Carga neta positiva de succión que la bomba requiere a su caudal, de su curva, en la misma unidad, mayor que 0.",
  "Pull at the hitch (lbf, N), 0 or more; TOW.PULL gives it.":
    "Tiro en el enganche (lbf, N), 0 o más; lo da TOW.PULL.",
  "Allowable pull of the weakest tubing or joint, in the same unit, above 0; TOW.SAFEPULL gives it.":
    "Tiro admisible de la tubería o unión más débil, en la misma unidad, mayor que 0; lo da TOW.SAFEPULL.",
};
