import type { WorkshopWords } from "./shape";

export const es: WorkshopWords = {
  language: "es",
  lessons: [
    {
      id: "cans",
      page: "Pluviómetros",
      title: "¿Qué recibió el suelo?",
      question:
        "Dieciséis pluviómetros estuvieron en cuadrícula entre cuatro aspersores durante un turno entero. ¿Recogieron todos lo mismo?",
      guess: "El cuarto más seco de los pluviómetros entre la media (1 sería parejo)",
      hand: "Ordene los pluviómetros de seco a mojado. Saque la media del cuarto más seco, y divídala entre la media de todos.",
      field:
        "Vaya al pluviómetro más seco y mire hacia arriba: una boquilla tapada, un elevador inclinado, un espaciamiento muy ancho para el viento. Corrija eso primero; los turnos más largos solo gastan agua donde ya está mojado.",
      source:
        "ASAE S436.1 para la prueba de pluviómetros y Christiansen (1942) para su uniformidad, de memoria; cuatro pluviómetros de dieciséis son el cuarto más seco por definición.",
      trainer: {
        minutes: 40,
        ask: "¿Quién ha medido lo que recibe el suelo, y no solo lo que da la bomba?",
        say: "«Desde el camino se ve parejo.» Deje que encuentren el pluviómetro más seco primero a ojo, luego midiendo.",
        answer:
          "El cuarto más seco recibe 0.71 de la media; la uniformidad de Christiansen es 0.82.",
      },
      handout: "El cuarto más seco entre la media se llama [uniformidad de distribución].",
    },
    {
      id: "rate",
      page: "Intensidad y suelo",
      title: "¿Qué tan rápido llueve, y lo absorbe el suelo?",
      question:
        "El suelo es un balde de cuello angosto: guarda tanto, y lo absorbe solo a cierta velocidad. ¿Qué tan rápido vierten los aspersores?",
      guess: "La intensidad con que vierten los aspersores",
      hand: {
        US: "96.25 por el caudal de un aspersor en gpm, entre espaciamiento por paso en ft, da in/h.",
        SI: "1000 por el caudal de un aspersor en m³/h, entre espaciamiento por paso en m, da mm/h.",
      },
      field:
        "El agua que se encharca entre los aspersores o que escurre dice que la intensidad es muy alta para este suelo en esta pendiente: boquillas menores, o un paso más ancho donde el viento lo admita, no solo menos horas.",
      source:
        "Un caudal sobre una superficie es una intensidad: aritmética. Lo que guardan y absorben los suelos: USDA-NRCS, National Engineering Handbook, Part 652, de memoria.",
      trainer: {
        minutes: 25,
        ask: "¿Cuál es la lluvia más fuerte que absorbe su suelo antes de que se encharque?",
        say: "«Tan rápido como dé la bomba.» Vierta un vaso despacio y luego de golpe en una bandeja de tierra.",
        answer:
          "Cerca de 0.18 in/h (4.4 mm/h) en el campo de muestra; el franco limoso absorbe más en su pendiente suave.",
      },
      handout:
        "La intensidad es el caudal de un aspersor entre la [superficie de un aspersor: espaciamiento por paso].",
    },
    {
      id: "hours",
      page: "Horas y traslados",
      title: "¿Cuántas horas, y cuándo muevo?",
      question:
        "El suelo necesita de vuelta su lámina neta. ¿Cuánto debe quedar la línea, y cuántas veces se puede mover en un día?",
      guess: "Horas de un turno",
      hand: "Lámina neta entre intensidad, entre eficiencia. Luego un día de trabajo entre las horas de un turno más las de un traslado, redondeado hacia abajo.",
      field:
        "Use las horas que llevan la eficiencia: alcanzan para unos cuatro quintos del campo. Las de la media sola dejan corta la mitad del campo. Las horas para el cuarto más seco son todavía más: para un cultivo que las pague.",
      source:
        "Lámina entre intensidad: aritmética. Qué parte del campo debe recibir bastante es una elección; planificar para unos cuatro quintos es práctica común, sin fuente.",
      trainer: {
        minutes: 25,
        ask: "¿Cómo sabe que un turno es bastante largo?",
        say: "«De la cena al desayuno.» Calcule qué lámina da eso, luego pregunte cuánto guardan las raíces.",
        answer:
          "Lámina entre intensidad entre eficiencia. Un turno que no cabe en el día pide un día más largo, o una lámina menor más seguido; otra línea no lo acorta.",
      },
      handout: "Horas de un turno = lámina neta entre [intensidad], entre [eficiencia].",
    },
    {
      id: "wind",
      page: "Espaciamiento y viento",
      title: "¿A qué distancia, cuando sopla el viento?",
      question:
        "Un aspersor moja un círculo; el viento lo adelgaza de un lado. ¿Cuánto se puede mover la línea?",
      guess: "El paso más ancho con este viento",
      hand: "Diámetro mojado por una parte: 0.65 en calma, 0.60 hasta 5 mph (8 km/h), 0.50 hasta 10 mph (16 km/h), 0.45 por encima. A lo largo de la línea 0.50 con cualquier viento.",
      field:
        "Riegue de noche o temprano, cuando el viento duerme. Si el viento de la tarde es el doble del planeado, mueva menos o espere.",
      source:
        "Norma de práctica de conservación del USDA-NRCS, Sprinkler System, Code 442: mayores espaciamientos según el viento, de memoria.",
      trainer: {
        minutes: 20,
        ask: "¿Cuándo hay más calma donde usted está?",
        say: "«El viento se empareja solo.» No lo hace donde sopla de un lado toda la temporada.",
        answer:
          "0.60 del diámetro mojado con el viento del campo de muestra. El paso queda dentro de eso.",
      },
      handout: "Con viento más fuerte el paso debe ser [menor].",
    },
    {
      id: "pressure",
      page: "Presión",
      title: "¿Qué le quita una tubería a la presión?",
      question: "El agua roza la pared. ¿Cuánta presión se ha ido al final de una tubería?",
      guess: "Presión perdida en la tubería de abajo",
      hand: {
        US: "1050 por (gpm entre C) a la potencia 1.852, por las pulgadas de diámetro interior a la potencia -4.87: pies en 100 pies. 2.31 ft son 1 psi.",
        SI: "1.217 × 10¹² por (L/s entre C) a la potencia 1.852, por los mm de diámetro interior a la potencia -4.87: metros en 100 metros. 1 m son 9.79 kPa.",
      },
      field:
        "Lea un manómetro en cada extremo de la alimentadora y reste lo que sube el terreno entre ambos (2.31 ft son 1 psi, 1 m son 9.79 kPa): el resto es lo que se perdió en la tubería. Mucho más que lo planeado: demasiado caudal, una tubería aplastada o sucia, o un diámetro interior menor de lo que cree.",
      source:
        "Hazen–Williams como lo imprime el manual: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation; en L/s y mm es la misma ecuación convertida.",
      trainer: {
        minutes: 25,
        ask: "Con el doble de caudal, ¿es el doble de pérdida?",
        say: "«El doble.» Son 3.6 veces. Deje que lo encuentren duplicando el caudal.",
        answer: "Dos a la potencia 1.852 es 3.61.",
      },
      handout: "El doble de caudal en una tubería pierde [3.6] veces la presión.",
    },
    {
      id: "along",
      page: "A lo largo",
      title: "¿Por qué se pierde tanto menos a lo largo de una línea?",
      question:
        "Cada aspersor toma su parte, así que la tubería lleva cada vez menos. ¿Qué parte de la pérdida completa queda?",
      guess:
        "Pérdida de una línea de ocho aspersores entre la de todo el caudal en todo el recorrido (0 a 1)",
      hand: "Sume los tramos. O tome el factor: 1/2.852 + 1/(2 N) + 0.923/(6 N²), con N salidas.",
      field:
        "Cerca de la entrada la tubería trabaja más: ahí conviene un tamaño mayor. El factor supone todos los aspersores iguales; en una línea larga no lo son, y solo la línea resuelta lo dice.",
      source:
        "Factor de salidas múltiples de Christiansen (1942), como en USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11; la suma exacta es aritmética.",
      trainer: {
        minutes: 20,
        ask: "¿Qué corre por el último tramo?",
        say: "«Lo mismo que en todas partes.» Cuéntelo: el caudal de un aspersor.",
        answer: "Cerca de 0.42 con ocho; baja hacia 0.35 con muchísimos.",
      },
      handout: "El último tramo de una línea lleva el caudal de [un] aspersor.",
    },
    {
      id: "band",
      page: "Franja de presión",
      title: "¿Cuánto puede variar la presión?",
      question:
        "La norma de práctica deja que la presión varíe un quinto de la media. ¿Cuántos aspersores cumplen, cuesta arriba, a nivel y cuesta abajo?",
      guess: "El máximo de aspersores en una línea de la tubería mayor",
      hand: "Mayor menos menor, entre la media. El caudal de un aspersor va con la raíz cuadrada de su presión: un quinto de presión es un décimo de caudal.",
      field:
        "Tienda la línea por la curva de nivel o un poco cuesta abajo: la bajada devuelve lo que quita la fricción. Cuesta arriba, quitan la fricción y también la subida.",
      source:
        "Norma de práctica de conservación del USDA-NRCS, Sprinkler System, Code 442: el límite de un quinto, de memoria. La raíz cuadrada es la de toda boquilla.",
      trainer: {
        minutes: 25,
        ask: "¿Qué aspersor tiene la menor presión en una línea cuesta abajo?",
        say: "«El último.» A menudo es uno del medio: la fricción se gasta pronto, la bajada ayuda en todo el recorrido.",
        answer: "Mire el dibujo: el punto más bajo de cada línea.",
      },
      handout: "La presión puede variar un [quinto]; el caudal varía entonces un [décimo].",
    },
    {
      id: "bore",
      page: "Tubería",
      title: "¿Qué tamaño va en la fórmula?",
      question:
        "El tubo dice 50. Ese es su exterior, en milímetros. ¿Cuánto queda por dentro para el agua?",
      guess: "Diámetro interior de tubería de 50 mm, SDR 17",
      hand: "La pared es el exterior entre el SDR, redondeado hacia arriba: 3.0 mm, lo menos que admite la norma. En el medio de sus tolerancias la pared es de 3.2 mm y el exterior de 50.2 mm; el interior es ese exterior menos dos de esas paredes, como lo toma la función.",
      field:
        "Lea todo lo impreso en el tubo: tamaño, serie, SDR. Corte un retazo y mida el interior antes de confiar en un plan.",
      source:
        "ISO 4427-2 y ASTM F714, D2239 para las dimensiones de la tubería de polietileno, de memoria.",
      trainer: {
        minutes: 15,
        ask: "¿Qué mide el 50 de este tubo?",
        say: "«Por dentro.» Haga circular un trozo con un calibrador.",
        answer:
          "43.8 mm de interior (1.72 in). Con 50 en la fórmula quedaría oculta casi la mitad de la pérdida.",
      },
      handout: "El tamaño impreso en tubería métrica es su [diámetro exterior].",
    },
    {
      id: "sizes",
      page: "Dos tamaños",
      title: "¿Dónde puede achicarse la tubería?",
      question:
        "A medio camino queda solo la mitad del agua. ¿Después de cuántos tramos alcanza la tubería menor, más barata?",
      guess: "Tramos de la tubería mayor",
      hand: "Tome el caudal que queda después del tramo, y la pérdida en el diámetro interior menor; súmela hacia afuera y compare con el límite.",
      field:
        "Compre el tamaño mayor para el lado de la entrada y marque la unión: tendida al revés, a los aspersores lejanos no les alcanza la presión.",
      source:
        "La línea resuelta contra el límite de la norma de práctica; dos tamaños en una línea son práctica común, sin fuente.",
      trainer: {
        minutes: 20,
        ask: "¿En qué parte de la línea rinde más un dólar de tubería mayor?",
        say: "«En el extremo lejano, donde la presión es baja.» Mire qué tramos la pierden.",
        answer: "En la entrada: la primera mitad pierde la mayor parte de la presión.",
      },
      handout: "La tubería mayor va en el extremo de [entrada] de la línea.",
    },
    {
      id: "pump",
      page: "Alimentadora y bomba",
      title: "¿Qué debe dar la bomba?",
      question:
        "Del aspersor lejano de vuelta al estanque: línea, alimentadora, principal, filtro, elevación. ¿Cuánto suma?",
      guess: "Carga dinámica total",
      hand: {
        US: "Todas las presiones en psi por 2.31, más la elevación en ft, es la carga en ft. Potencia en hp: gpm por ft entre 3960, entre la eficiencia de la bomba.",
        SI: "Todas las presiones en kPa entre 9.79, más la elevación en m, es la carga en m. Potencia en kW: m³/h por m entre 367, entre la eficiencia de la bomba.",
      },
      field:
        "Una bomba da lo que dice su curva al caudal que se le pide. Menos líneas en marcha es más presión: cierre un poco la válvula del hidrante.",
      source:
        "La ecuación de Bernoulli; las constantes son las de las unidades. La curva de la bomba es de su fabricante.",
      trainer: {
        minutes: 20,
        ask: "Se cierra una línea. ¿La presión en la otra sube o baja?",
        say: "«Queda igual.» Siga la curva hacia la izquierda.",
        answer: "Sube: menos caudal, más carga, menos pérdida en el camino.",
      },
      handout: "Cuando riegan menos líneas, la presión en las otras [sube].",
    },
    {
      id: "end",
      page: "Fin de temporada",
      title: "¿Qué queda en la tubería cuando paramos?",
      question:
        "Antes de la helada y antes de remolcar, la línea debe estar vacía. ¿Cuánto hay en ella?",
      guess: "Agua en toda la línea",
      hand: {
        US: "0.0408 por el diámetro interior en pulgadas al cuadrado da galones en un pie.",
        SI: "0.0007854 por el diámetro interior en mm al cuadrado da litros en un metro.",
      },
      field:
        "Abra primero el extremo más bajo, deje entrar aire en el más alto, y dele tiempo. El agua que queda en los puntos bajos pesa al remolcar y raja accesorios con la helada.",
      source: "El volumen de un cilindro: geometría.",
      trainer: {
        minutes: 15,
        ask: "¿Cuánto pesa la línea antes de vaciarla?",
        say: "«Es solo plástico.» Calcule el agua: 8.3 lb por galón, 1 kg por litro.",
        answer: "Unas tres veces lo que pesa la tubería misma.",
      },
      handout: "Antes de quitar los tapones, la línea debe estar sin [presión].",
    },
  ],
  exercises: {
    catchDepth: {
      ask: {
        US: "Un pluviómetro con boca de {opening} in recogió {volume} mL. ¿Qué lámina es?",
        SI: "Un pluviómetro con boca de {opening} mm recogió {volume} mL. ¿Qué lámina es?",
      },
      hint: "Volumen entre el área de la boca.",
      second: {
        US: "1 mL son 0.0610 pulgadas cúbicas; la boca tiene 12.57 pulgadas cuadradas.",
        SI: "1 mL son 1000 milímetros cúbicos; la boca tiene 7854 milímetros cuadrados.",
      },
      shown: {
        US: "{volume} × 0.0610 ÷ 12.57",
        SI: "{volume} × 1000 ÷ 7854",
      },
    },
    uniformity: {
      ask: "Los pluviómetros recogieron {a}, {b}, {c}, {d}, {e}, {f}, {g} y {h}. ¿Cuál es la uniformidad de Christiansen, como fracción?",
      hint: "La media es 10. ¿Cuánto se aparta de ella cada uno?",
      second: "Las distancias suman 12, las lecturas 80.",
      shown: "1 − 12 ÷ 80",
    },
    driestQuarter: {
      ask: "Los mismos pluviómetros: {a}, {b}, {c}, {d}, {e}, {f}, {g} y {h}. ¿Cuánto es el cuarto más seco entre la media, como fracción?",
      hint: "Un cuarto de ocho pluviómetros son dos: los dos más secos.",
      second: "Recogieron 7 y 8; la media de todos es 10.",
      shown: "(7 + 8) ÷ 2 ÷ 10",
    },
    rate: {
      ask: {
        US: "Un aspersor da {flow} gpm en {spacing} por {move} ft. ¿Cuál es la intensidad?",
        SI: "Un aspersor da {flow} m³/h en {spacing} por {move} m. ¿Cuál es la intensidad?",
      },
      hint: "El caudal de un aspersor entre la superficie de un aspersor.",
      second: {
        US: "96.25 por el caudal, entre {spacing} por {move}.",
        SI: "1000 por el caudal, entre {spacing} por {move}.",
      },
      shown: {
        US: "96.25 × {flow} ÷ ({spacing} × {move})",
        SI: "1000 × {flow} ÷ ({spacing} × {move})",
      },
    },
    netDepth: {
      ask: {
        US: "El suelo guarda {holds} in en cada pie, las raíces llegan a {root} ft, y el cultivo puede usar {share} de eso. ¿Cuánto se puede reponer de una vez?",
        SI: "El suelo guarda {holds} mm en cada metro, las raíces llegan a {root} m, y el cultivo puede usar {share} de eso. ¿Cuánto se puede reponer de una vez?",
      },
      hint: "Primero lo que guarda en total la zona de raíces.",
      second: "{holds} por {root}, y de eso la parte {share}.",
      shown: "{holds} × {root} × {share}",
    },
    hours: {
      ask: {
        US: "¿Cuántas horas toma una lámina neta de {depth} in a {rate} in/h con una eficiencia de {efficiency}?",
        SI: "¿Cuántas horas toma una lámina neta de {depth} mm a {rate} mm/h con una eficiencia de {efficiency}?",
      },
      hint: "Lámina entre intensidad; luego más, por lo que no llega a las raíces.",
      second: "Divida también entre la eficiencia: es menor que 1, así que las horas son más.",
      shown: "{depth} ÷ {rate} ÷ {efficiency}",
    },
    setsADay: {
      ask: "Un turno toma {hours} horas, un traslado {move} horas, el día tiene {day}. ¿Cuántos turnos enteros por día?",
      hint: "Cada turno trae su traslado.",
      second: "{day} entre la suma de {hours} y {move}, redondeado hacia abajo.",
      shown: "{day} ÷ ({hours} + {move}), redondeado hacia abajo",
    },
    widestMove: {
      ask: {
        US: "Un aspersor moja {wetted} ft de lado a lado; el viento es de {wind} mph. ¿Cuál es el paso más ancho?",
        SI: "Un aspersor moja {wetted} m de lado a lado; el viento es de {wind} km/h. ¿Cuál es el paso más ancho?",
      },
      hint: "Una parte del diámetro mojado: búsquela según el viento.",
      second: "Hasta 5 mph (8 km/h) la parte es {share}.",
      shown: "{share} × {wetted}",
    },
    friction: {
      ask: {
        US: "¿Cuánta presión pierden {flow} gpm en {length} ft de tubería con un diámetro interior de {bore} in, C {c}?",
        SI: "¿Cuánta presión pierden {flow} m³/h en {length} m de tubería con un diámetro interior de {bore} mm, C {c}?",
      },
      hint: "Hazen–Williams: primero la pérdida en cien largos.",
      second: {
        US: "5.32 ft en cada 100 ft; 2.31 ft son 1 psi.",
        SI: "4.94 m en cada 100 m; 1 m son 9.79 kPa.",
      },
      shown: {
        US: "1050 × ({flow} ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 ÷ 2.31",
        SI: "1.217e12 × ({flow} ÷ 3.6 ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 × 9.79",
      },
    },
    headFlow: {
      ask: {
        US: "Una boquilla tiene K {k} (gpm y psi). ¿Cuánto da a {pressure} psi?",
        SI: "Una boquilla tiene K {k} (m³/h y kPa). ¿Cuánto da a {pressure} kPa?",
      },
      hint: "El caudal va con la raíz cuadrada de la presión.",
      second: "La raíz es {root}; por K.",
      shown: "{k} × √{pressure} = {k} × {root}",
    },
    factor: {
      ask: "¿Cuál es el factor de salidas múltiples F con {outlets} salidas?",
      hint: "Entre los factores de 12 y de 16 salidas: un poco menos de 0.40.",
      second: "1/2.852 + 1/28 + 0.923/1176.",
      shown: "0.3506 + 0.0357 + 0.0008",
    },
    shortcut: {
      ask: {
        US: "{outlets} aspersores toman {flow} gpm de {length} ft de tubería con un diámetro interior de {bore} in, C {c}. ¿Cuánto dice el atajo con F que se pierde?",
        SI: "{outlets} aspersores toman {flow} m³/h de {length} m de tubería con un diámetro interior de {bore} mm, C {c}. ¿Cuánto dice el atajo con F que se pierde?",
      },
      hint: "La pérdida de todo el caudal por todo el largo, por F.",
      second: {
        US: "Todo el caudal perdería cerca de 12.4 psi; F es 0.387.",
        SI: "Todo el caudal perdería cerca de 85 kPa; F es 0.387.",
      },
      shown: {
        US: "1050 × ({flow} ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 ÷ 2.31 × 0.387",
        SI: "1.217e12 × ({flow} ÷ 3.6 ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 × 9.79 × 0.387",
      },
    },
    mostHeads: {
      ask: {
        US: "Una línea a nivel empieza con {inlet} psi; hay aspersores con K {k} cada {spacing} ft; el diámetro interior es {bore} in, C {c}. ¿Cuántos cumplen con {limit}?",
        SI: "Una línea a nivel empieza con {inlet} kPa; hay aspersores con K {k} cada {spacing} m; el diámetro interior es {bore} mm, C {c}. ¿Cuántos cumplen con {limit}?",
      },
      hint: "Deje que busque la función: LATERAL.MAXHEADS, primero el límite.",
      second: "Más de 14 y menos de 21.",
      shown: "la función prueba línea por línea; solo se puede resolver",
    },
    bore: {
      ask: {
        US: "Tubería métrica, {size} mm, SDR {sdr}. ¿Cuál es su diámetro interior, en pulgadas?",
        SI: "Tubería métrica, {size} mm, SDR {sdr}. ¿Cuál es su diámetro interior?",
      },
      hint: "Exterior menos dos paredes, cada medida en el medio de su tolerancia: 50.0 a 50.4 mm, 3.0 a 3.4 mm.",
      second: {
        US: "El exterior es de 50.2 mm, una pared de 3.2 mm; 25.4 mm son una pulgada.",
        SI: "El exterior es de 50.2 mm, una pared de 3.2 mm.",
      },
      shown: { US: "(50.2 − 2 × 3.2) ÷ 25.4", SI: "50.2 − 2 × 3.2" },
    },
    segment: {
      ask: {
        US: "Una línea de {heads} aspersores, {head} gpm cada uno. ¿Cuánta presión pierde el tramo {segment} en {length} ft de tubería con un diámetro interior de {bore} in, C {c}?",
        SI: "Una línea de {heads} aspersores, {head} m³/h cada uno. ¿Cuánta presión pierde el tramo {segment} en {length} m de tubería con un diámetro interior de {bore} mm, C {c}?",
      },
      hint: "Primero: ¿a cuántos aspersores alimenta todavía ese tramo?",
      second: "{left} aspersores: un caudal de {flow}.",
      shown: {
        US: "1050 × ({flow} ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 ÷ 2.31",
        SI: "1.217e12 × ({flow} ÷ 3.6 ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 × 9.79",
      },
    },
    pumpHead: {
      ask: {
        US: "El hidrante necesita {pressure} psi, la tubería principal y el filtro pierden {losses} psi, el agua se eleva {lift} ft. ¿Cuál es la carga dinámica total?",
        SI: "El hidrante necesita {pressure} kPa, la tubería principal y el filtro pierden {losses} kPa, el agua se eleva {lift} m. ¿Cuál es la carga dinámica total?",
      },
      hint: "Sume las presiones y conviértalas en carga; luego la elevación.",
      second: {
        US: "{sum} psi; 1 psi son 2.31 ft de agua.",
        SI: "{sum} kPa; 9.79 kPa son 1 m de agua.",
      },
      shown: { US: "{sum} × 2.31 + {lift}", SI: "{sum} ÷ 9.79 + {lift}" },
    },
    power: {
      ask: {
        US: "Una bomba da {flow} gpm a {head} ft con una eficiencia de {efficiency}. ¿Qué potencia necesita en el eje?",
        SI: "Una bomba da {flow} m³/h a {head} m con una eficiencia de {efficiency}. ¿Qué potencia necesita en el eje?",
      },
      hint: "Caudal por carga es la potencia del agua; en el eje hace falta más.",
      second: {
        US: "{flow} por {head} entre 3960, entre la eficiencia.",
        SI: "{flow} por {head} entre 367, entre la eficiencia.",
      },
      shown: {
        US: "{flow} × {head} ÷ 3960 ÷ {efficiency}",
        SI: "{flow} × {head} ÷ 367 ÷ {efficiency}",
      },
    },
    water: {
      ask: {
        US: "¿Cuánta agua hay en {length} ft de tubería con un diámetro interior de {bore} in?",
        SI: "¿Cuánta agua hay en {length} m de tubería con un diámetro interior de {bore} mm?",
      },
      hint: "El área interior por el largo.",
      second: {
        US: "0.0408 por el diámetro interior al cuadrado son galones en un pie.",
        SI: "0.0007854 por el diámetro interior al cuadrado son litros en un metro.",
      },
      shown: { US: "0.0408 × {bore}² × {length}", SI: "0.0007854 × {bore}² × {length}" },
    },
  },
  pictures: {
    cansTitle: "Lámina en los pluviómetros entre cuatro aspersores",
    sprinkler: "Aspersor",
    canCaught: "El pluviómetro de la fila 3, columna 3 recogió",
    mean: "Lámina media",
    du: "Cuarto más seco entre la media (DU)",
    cu: "Uniformidad de Christiansen (CU)",
    cansSaid: "El cuarto más seco (▽) recibe {du} de la media.",
    bucketTitle: "El suelo como un balde de cuello angosto",
    headFlow: "Caudal de un aspersor",
    spacing: "Espaciamiento",
    move: "Paso",
    slope: "Pendiente",
    pours: "Los aspersores vierten",
    takes: "El suelo absorbe",
    runsOff: "escurre",
    soilGood: "El suelo lo absorbe todo.",
    soilBad: "Más de lo que absorbe el suelo: el agua se encharca o escurre.",
    fieldTitle: "El campo con sus posiciones, y el día de cada una",
    netDepth: "Lámina neta",
    efficiency: "Eficiencia",
    lines: "Líneas",
    line: "Línea",
    dayBelow: "Arriba: posición. Abajo: su día.",
    setHours: "Horas de un turno",
    setsADay: "Turnos por día con una línea",
    roundDays: "Días para cubrir el campo",
    hoursSaid: "Riegue {hours} horas, luego mueva; el campo se cubre en {days} días.",
    tooLong:
      "Un turno no cabe en el día de trabajo: más líneas no ayudan, una lámina menor o un día más largo sí.",
    overlap: "Entre ellas, sin viento (▽ más seco): CU",
    windTitle: "Dos posiciones de una línea y lo que mojan",
    wetted: "Diámetro mojado",
    wind: "Viento",
    widestMove: "Paso más ancho",
    windGood: "El paso está dentro de lo que admite este viento.",
    windBad: "Muy ancho para este viento: una franja seca entre las posiciones.",
    pressureTitle: "Presión perdida según el caudal",
    pipeFlow: "Caudal",
    bore: "Diámetro interior",
    lost: "Pérdida",
    twice: "Con el doble de caudal, la pérdida es",
    speed: "Velocidad",
    pressureSaid: "En esta tubería se pierden {lost}.",
    alongTitle: "Lo que lleva cada tramo de la línea",
    heads: "Aspersores en la línea",
    factor: "Factor de salidas múltiples F",
    alongBelow: "Aspersores que cada tramo todavía alimenta",
    equalLoss: "Pérdida con F, aspersores tomados por iguales",
    solvedLoss: "Pérdida de la línea resuelta",
    alongLong:
      "En una línea tan larga los aspersores lejanos reciben menos presión y dan menos agua. F no puede saberlo: resuelva la línea.",
    alongSaid: "Todo el caudal pasa solo por el primer tramo: queda F de la pérdida completa.",
    bandTitle: "Presión a lo largo de la línea, cuesta arriba, a nivel y cuesta abajo",
    uphill: "Cuesta arriba",
    level: "A nivel",
    downhill: "Cuesta abajo",
    band: "un quinto de la media",
    bandUphill: "el límite, cuesta arriba",
    bandGood: "Aun cuesta arriba esta línea cumple el límite.",
    bandBad: "Cuesta arriba esta línea varía demasiado.",
    boreTitle: "Pérdida según el diámetro interior",
    size: "Tamaño cercano",
    sizeShown: "Tubería mostrada",
    hidden: "Con el exterior en la fórmula",
    boreSaid: "El diámetro interior es {bore}.",
    sizesTitle: "Presión a lo largo de la línea en un tamaño y en dos",
    larger: "Tramos en la tubería mayor",
    allLarger: "Toda mayor",
    twoSizes: "Dos tamaños",
    sizesGood: "Con este cambio de tamaño la línea cumple el límite.",
    sizesBad: "Demasiado pronto: la línea varía demasiado.",
    pumpTitle: "La curva de la bomba",
    linesRunning: "Líneas en marcha",
    head: "Carga",
    pumpSaid: "Menos líneas: menos caudal, más carga.",
    endTitle: "El terreno bajo la línea",
    length: "Largo de la línea",
    ground: "Altura",
    water: "Agua en la línea",
    weight: "Pesa",
    endSaid:
      "Toda en la tubería mayor contiene {water}. Los puntos bajos guardan la suya si no entra aire.",
  },
  page: {
    lessons: "Lecciones",
    trainer: "Para quien enseña",
    handout: "Hoja de trabajo",
    key: "Hoja de trabajo con su clave",
    slides: "Diapositivas",
    lesson: "Lección",
    units: "Unidades",
    guessFirst: "Primero adivine",
    guessAsk: "Lo que usted cree",
    look: "Mire",
    exercises: "Ahora usted",
    inTheField: "En el campo",
    byHand: "A mano",
    byFunction: "Con función",
    source: "Fuente",
    previous: "Anterior",
    next: "Siguiente",
    large: "Mostrar en grande",
    leave: "Salir",
    print: "Imprimir",
    allSlides: "Todas las diapositivas, para imprimir o guardar en PDF",
    scan: "Escanee para abrir esta lección",
    ownAddress:
      "Esta dirección sirve solo en esta computadora. Para los teléfonos, abra la página con la dirección que muestra «npm run hall».",
    formulaNote: "Donde su hoja escribe coma decimal, los argumentos se separan con punto y coma.",
    score: "{right} de {all} bien",
    scoreNote: "Las respuestas que se mostraron no cuentan.",
    check: "Revisar",
    hint: "Pista",
    secondHint: "Segunda pista",
    showMe: "Muéstreme",
    noUnit: "un número solo",
    numbers: "Los números",
    minutes: "min",
    ask: "Pregunte",
    say: "Dirán",
    answer: "Respuesta",
    answers: "Respuestas de los ejercicios",
    start: "Once lecciones cortas. Adivine, mire, luego pruebe usted: basta un teléfono.",
    trainerIntro:
      "Medio día para quince personas. Los pluviómetros van primero: póngalos antes de que llegue la gente. Cada pareja necesita un teléfono o una computadora; nadie necesita un programa de hojas de cálculo.",
    link: "Enlace para el teléfono de un participante",
    handoutTitle: "Líneas móviles de aspersores: llene los espacios",
    name: "Nombre",
    workbook: "Las mismas lecciones están en el libro Taller, con todas las fórmulas.",
    unreachable: "El taller no pudo arrancar.",
    outOfRange: "Nada que dibujar con estos números:",
    safety: "Seguridad",
    verdicts: {
      right: "Bien.",
      percent: "Cerca: eso es porcentaje. Escríbalo como fracción.",
      close: "Cerca, a menos de un vigésimo. Revise su redondeo.",
      "not yet": "Todavía no.",
      unread: "Eso no empieza con un número.",
      unit: "La respuesta pide {unit}.",
    },
  },
};
