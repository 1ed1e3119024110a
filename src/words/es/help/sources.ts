import type { Texts } from "../../translate";

/** Where formulas come from; titles of what was published stay, and so does a source that is nothing else. */
export const sources: Texts = {
  "Continuity; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).":
    "Continuidad; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).",
  "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); velocity limit of Conservation Practice Standard 430.":
    "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); límite de velocidad de la Conservation Practice Standard 430.",
  "Continuity; USDA-NRCS, Conservation Practice Standard 430, Irrigation Pipeline.":
    "Continuidad; USDA-NRCS, Conservation Practice Standard 430, Irrigation Pipeline.",
  "The volume of a cylinder.": "El volumen de un cilindro.",
  "ISO 4427-2 (2007), EN 12201-2, ISO 11922-1; Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6, with ASTM D3035; ASTM D2239.":
    "ISO 4427-2 (2007), EN 12201-2, ISO 11922-1; Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2.ª edición, capítulo 6, con ASTM D3035; ASTM D2239.",
  "ISO 4427-2 (2007), ISO 11922-1; ASTM D3035 with ANSI B36.10; ASTM D2239.":
    "ISO 4427-2 (2007), ISO 11922-1; ASTM D3035 con ANSI B36.10; ASTM D2239.",
  "Plastics Pipe Institute, answers to frequent questions on polyethylene pipe: thermal expansion, about 9 × 10⁻⁵ in/in/°F.":
    "Plastics Pipe Institute, respuestas a preguntas frecuentes sobre tubería de polietileno: dilatación térmica, cerca de 9 × 10⁻⁵ in/in/°F.",
  "ISO 4427-1 (2007) with annex A, ISO 4427-2 (2007) for the nominal pressures; ASTM D3035 and D2239; Plastics Pipe Institute TR-4 and Handbook of Polyethylene Pipe, 2nd edition, chapter 3, table A.2.":
    "ISO 4427-1 (2007) con su anexo A, ISO 4427-2 (2007) para las presiones nominales; ASTM D3035 y D2239; Plastics Pipe Institute TR-4 y Handbook of Polyethylene Pipe, 2.ª edición, capítulo 3, tabla A.2.",
  "Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6.":
    "Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2.ª edición, capítulo 6.",
  "G. S. Kell (1975), Journal of Chemical and Engineering Data 20, equation 16.":
    "G. S. Kell (1975), Journal of Chemical and Engineering Data 20, ecuación 16.",
  "IAPWS SR1-86 (1992); Wagner and Pruss (1993), Journal of Physical and Chemical Reference Data 22, equation 1.":
    "IAPWS SR1-86 (1992); Wagner y Pruss (1993), Journal of Physical and Chemical Reference Data 22, ecuación 1.",
  "The orifice equation with the manufacturer's own points; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).":
    "La ecuación del orificio con los puntos del propio fabricante; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).",
  "Linear least squares; the orifice equation.":
    "Mínimos cuadrados lineales; la ecuación del orificio.",
  "Older issues of USDA-NRCS Conservation Practice Standard 442, Irrigation System, Sprinkler (from memory).":
    "Ediciones anteriores de USDA-NRCS Conservation Practice Standard 442, Irrigation System, Sprinkler (de memoria).",
  "Energy and continuity along the line; friction of USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), or Colebrook (1939), Journal of the ICE 11.":
    "Energía y continuidad a lo largo de la línea; fricción de USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), o Colebrook (1939), Journal of the ICE 11.",
  "Arithmetic.": "Aritmética.",
  "Pythagoras' theorem.": "El teorema de Pitágoras.",
  "Plane geometry: circles of the reach around the near ends.":
    "Geometría plana: círculos del alcance alrededor de los extremos cercanos.",
  "Plane geometry.": "Geometría plana.",
  "Bernoulli's equation; water 998.2 kg/m³, g 9.80665 m/s².":
    "La ecuación de Bernoulli; agua 998.2 kg/m³, g 9.80665 m/s².",
  "Definition of power; water 998.2 kg/m³, g 9.80665 m/s².":
    "Definición de potencia; agua 998.2 kg/m³, g 9.80665 m/s².",
  "ICAO Doc 7488, standard atmosphere; ANSI/HI 9.6.1, definition.":
    "ICAO Doc 7488, atmósfera estándar; ANSI/HI 9.6.1, definición.",
  "Fritsch and Carlson (1980), SIAM Journal on Numerical Analysis 17; Fritsch and Butland (1984), SIAM Journal on Scientific and Statistical Computing 5.":
    "Fritsch y Carlson (1980), SIAM Journal on Numerical Analysis 17; Fritsch y Butland (1984), SIAM Journal on Scientific and Statistical Computing 5.",
  "Hydrostatics; water 998.2 kg/m³, g 9.80665 m/s².":
    "Hidrostática; agua 998.2 kg/m³, g 9.80665 m/s².",
  "Energy and continuity; friction of USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), or Colebrook (1939), Journal of the ICE 11; curve by Fritsch and Butland (1984).":
    "Energía y continuidad; fricción de USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), o Colebrook (1939), Journal of the ICE 11; curva de Fritsch y Butland (1984).",
  "A water balance.": "Un balance de agua.",
  "The volume of a cylinder; the catch-can equation PR = 3.66 V/(T·A) of irrigation audits (mL, min, square inches).":
    "El volumen de un cilindro; la ecuación de los pluviómetros PR = 3.66 V/(T·A) de las auditorías de riego (mL, min, pulgadas cuadradas).",
  "Superposition of one head's pattern, as the handbooks overlap catches (Christiansen 1942).":
    "Superposición del patrón de un aspersor, como los manuales traslapan las lecturas (Christiansen 1942).",
  "Superposition of one line's pattern, as the handbooks overlap catches (Christiansen 1942).":
    "Superposición del patrón de una línea, como los manuales traslapan las lecturas (Christiansen 1942).",
  "Keller and Bliesner (1990), Sprinkle and Trickle Irrigation; from memory, the bounds also in the CIGR Handbook of Agricultural Engineering, Volume I (1999).":
    "Keller y Bliesner (1990), Sprinkle and Trickle Irrigation; de memoria, los límites también en el CIGR Handbook of Agricultural Engineering, Volume I (1999).",
  "Keller and Bliesner (1990), Sprinkle and Trickle Irrigation, after Frost and Schwalen (1955); from memory.":
    "Keller y Bliesner (1990), Sprinkle and Trickle Irrigation, según Frost y Schwalen (1955); de memoria.",
  "Keller and Bliesner (1990), Sprinkle and Trickle Irrigation; from memory.":
    "Keller y Bliesner (1990), Sprinkle and Trickle Irrigation; de memoria.",
  "Arithmetic of the working day.": "Aritmética del día de trabajo.",
  "Arithmetic of the field's width.": "Aritmética del ancho del campo.",
  "Arithmetic of the rotation: every position once, no line in two places.":
    "Aritmética de la rotación: cada posición una vez, ninguna línea en dos lugares.",
  "Arithmetic of the rotation.": "Aritmética de la rotación.",
  "NIST Special Publication 811 (2008), Appendix B, for the acre, the inch and the gallon.":
    "NIST Special Publication 811 (2008), Appendix B, para el acre, la pulgada y el galón.",
  "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), Table 11-1: ranges read in a secondary text, averages from memory.":
    "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), Table 11-1: rangos leídos en un texto secundario, medias de memoria.",
  "Classes: USDA Soil Conservation Service, National Engineering Handbook, Section 15 Chapter 11 (1983), maximum application rates; the textures in them: common practice, no source.":
    "Clases: USDA Soil Conservation Service, National Engineering Handbook, Section 15 Chapter 11 (1983), intensidades máximas de aplicación; las texturas en ellas: práctica común, sin fuente.",
  "USDA Soil Conservation Service, National Engineering Handbook, Section 15 Chapter 11 (1983), maximum application rates, bare and with cover, read in a secondary text and from memory.":
    "USDA Soil Conservation Service, National Engineering Handbook, Section 15 Chapter 11 (1983), intensidades máximas de aplicación, con suelo desnudo y con cubierta, leídas en un texto secundario y de memoria.",
  "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); FAO Irrigation and Drainage Paper 56 (1998), equations 82 and 83.":
    "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); FAO Irrigation and Drainage Paper 56 (1998), ecuaciones 82 y 83.",
  "USDA Soil Conservation Service, Technical Release 21 (revised 1970); National Engineering Handbook, Part 623 Chapter 2 (1993), equations 2-84 and 2-85, read in secondary texts.":
    "USDA Soil Conservation Service, Technical Release 21 (revised 1970); National Engineering Handbook, Part 623 Chapter 2 (1993), ecuaciones 2-84 y 2-85, leídas en textos secundarios.",
  "FAO Irrigation and Drainage Paper 56 (1998), Table 22, read in a secondary text.":
    "FAO Irrigation and Drainage Paper 56 (1998), Table 22, leída en un texto secundario.",
  "FAO Irrigation and Drainage Paper 56 (1998), Table 22 and its footnote 2, read in a secondary text.":
    "FAO Irrigation and Drainage Paper 56 (1998), Table 22 y su nota 2, leídas en un texto secundario.",
  "FAO Irrigation and Drainage Paper 56 (1998), Table 12, read in a secondary text.":
    "FAO Irrigation and Drainage Paper 56 (1998), Table 12, leída en un texto secundario.",
  "FAO Irrigation and Drainage Paper 56 (1998), equation 6 and chapters 3 and 4; ASCE Standardized Reference Evapotranspiration Equation (2005) for the lower limit of Rs/Rso.":
    "FAO Irrigation and Drainage Paper 56 (1998), ecuación 6 y capítulos 3 y 4; ASCE Standardized Reference Evapotranspiration Equation (2005) para el límite inferior de Rs/Rso.",
  "FAO Irrigation and Drainage Paper 56 (1998), equation 52, after Hargreaves and Samani (1985).":
    "FAO Irrigation and Drainage Paper 56 (1998), ecuación 52, según Hargreaves y Samani (1985).",
  "FAO Irrigation and Drainage Paper 56 (1998), equations 11, 14 and 17.":
    "FAO Irrigation and Drainage Paper 56 (1998), ecuaciones 11, 14 y 17.",
  "FAO Irrigation and Drainage Paper 56 (1998), equation 47.":
    "FAO Irrigation and Drainage Paper 56 (1998), ecuación 47.",
  "FAO Irrigation and Drainage Paper 56 (1998), equations 34 and 35.":
    "FAO Irrigation and Drainage Paper 56 (1998), ecuaciones 34 y 35.",
  "FAO Irrigation and Drainage Paper 56 (1998), equations 21 to 25.":
    "FAO Irrigation and Drainage Paper 56 (1998), ecuaciones 21 a 25.",
  "USDA Soil Conservation Service, Technical Release 21, Irrigation Water Requirements (revised 1970), from memory.":
    "USDA Soil Conservation Service, Technical Release 21, Irrigation Water Requirements (revised 1970), de memoria.",
  "Continuity; the least speed is common practice for flushing lines of small bore.":
    "Continuidad; la velocidad mínima es práctica común para lavar líneas de diámetro pequeño.",
  "Plug flow.": "Flujo en pistón.",
  "Communicating vessels.": "Vasos comunicantes.",
  "Torricelli's falling head with pipe friction, quasi-steady; friction as in PIPE.FRICTION.":
    "La carga decreciente de Torricelli con fricción en la tubería, casi permanente; fricción como en PIPE.FRICTION.",
  "The volume of a tube.": "El volumen de un tubo.",
  "Coulomb friction on a slope.": "Fricción de Coulomb en una pendiente.",
  "ASTM F1804, Standard Practice for Determining Allowable Tensile Load for Polyethylene (PE) Gas Pipe During Pull-In Installation; Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, for the temperature.":
    "ASTM F1804, Standard Practice for Determining Allowable Tensile Load for Polyethylene (PE) Gas Pipe During Pull-In Installation; Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2.ª edición, para la temperatura.",
  "Plastics Pipe Institute, Handbook of Polyethylene Pipe, cold bending (read in a secondary text).":
    "Plastics Pipe Institute, Handbook of Polyethylene Pipe, curvado en frío (leído en un texto secundario).",
  "GPX 1.1 schema; OGC 07-147r2 (KML 2.2); RFC 7946 (GeoJSON); geodesic of C. F. F. Karney (2013).":
    "Esquema GPX 1.1; OGC 07-147r2 (KML 2.2); RFC 7946 (GeoJSON); geodésica de C. F. F. Karney (2013).",
  "Surveyor's (shoelace) formula.": "La fórmula del agrimensor.",
  "Plane geometry: rows cut by edges, edges widened by the setback; area in a strip by Sutherland and Hodgman (1974), Communications of the ACM 17.":
    "Geometría plana: filas cortadas por los bordes, bordes ensanchados por el retiro; superficie en una franja según Sutherland y Hodgman (1974), Communications of the ACM 17.",
  "Plane geometry; Delaunay triangles.": "Geometría plana; triángulos de Delaunay.",
  "Plane geometry; Delaunay triangles for heights.":
    "Geometría plana; triángulos de Delaunay para las alturas.",
  "B. Delaunay (1934), Sur la sphère vide: the triangles whose circles hold no other spot.":
    "B. Delaunay (1934), Sur la sphère vide: los triángulos cuyos círculos no contienen otro punto.",
  "Practice standards for sprinkler systems and pipelines (NRCS 442, 430) for variation, spacing and share of the rating; engineering economics for the yearly cost; the sources of LATERAL.PRESSURE, FIELD.RUNS and PUMP.ENERGY for the rest.":
    "Normas de práctica para sistemas de aspersión y tuberías (NRCS 442, 430) para variación, espaciamiento y parte de la presión admisible; ingeniería económica para el costo anual; las fuentes de LATERAL.PRESSURE, FIELD.RUNS y PUMP.ENERGY para lo demás.",
  "As PLAN.SEARCH.": "Como PLAN.SEARCH.",
  "Engineering economics: capital recovery factor and present worth of a geometric series, closed form.":
    "Ingeniería económica: factor de recuperación del capital y valor presente de una serie geométrica, en forma cerrada.",
  "Counting; the rules are common practice.": "Conteo; las reglas son práctica común.",
  "Counting.": "Conteo.",
  "USDA-NRCS Conservation Practice Standard 442, Sprinkler System; from memory.":
    "USDA-NRCS Conservation Practice Standard 442, Sprinkler System; de memoria.",
  "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016): the rate must not exceed what the soil takes in.":
    "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016): la intensidad no debe pasar de lo que absorbe el suelo.",
  "USDA-NRCS Conservation Practice Standard 430, Irrigation Pipeline; from memory.":
    "USDA-NRCS Conservation Practice Standard 430, Irrigation Pipeline; de memoria.",
  "Common practice; the loss of 5 psi from memory. The regulator's own sheet goes first.":
    "Práctica común; la pérdida de 5 psi, de memoria. La hoja del propio regulador va primero.",
  "Common practice: the chart is the range that the sprinkler was tested in.":
    "Práctica común: la tabla es el rango en que se probó el aspersor.",
  "Older issues of USDA-NRCS Conservation Practice Standard 442; from memory.":
    "Ediciones anteriores de USDA-NRCS Conservation Practice Standard 442; de memoria.",
  "The definition of NPSH: a pump cavitates where the head available is below the head required.":
    "La definición de NPSH: una bomba cavita donde la carga disponible es menor que la requerida.",
  "The definition of an allowable pull: what the weakest part may carry.":
    "La definición de tiro admisible: lo que puede llevar la parte más débil.",
};
