# Safety signs: what is worn or done, and what is forbidden.
# Drawn for this project in the form of ISO 7010, whose referents and numbers they carry (from
# memory; a sign without a number has no referent there). The frame and the colours are those of
# ISO 3864-1: white in a blue disc; black in a red ring with a bar.
# The signs to unplug, to lock off, against flames and against touching serve authors' own hazards.
# An outline fills a square of 100 x 100; the paths that a smaller one cuts out run the other way.
# Example: gear cut-gloves with sign wear-gloves

sign wear-eye-protection "Wear eye protection"
  number     M004
  obliges
  outline    "M88 52 C88 76 71 96 50 96 C29 96 12 76 12 52 C12 28 29 8 50 8 C71 8 88 28 88 52 Z"
  outline    "M14 48 L20 48 L20 42 L14 42 Z M80 48 L86 48 L86 42 L80 42 Z"
  outline    "M26 36 L22 38 L20 42 L20 52 L22 56 L26 58 L41 58 L45 56 L47 52 L47 42 L45 38 L41 36 Z"
  outline    "M38 41 L41 42 L42 45 L42 49 L41 52 L38 53 L29 53 L26 52 L25 49 L25 45 L26 42 L29 41 Z"
  outline    "M59 36 L55 38 L53 42 L53 52 L55 56 L59 58 L74 58 L78 56 L80 52 L80 42 L78 38 L74 36 Z"
  outline    "M71 41 L74 42 L75 45 L75 49 L74 52 L71 53 L62 53 L59 52 L58 49 L58 45 L59 42 L62 41 Z"
  outline    "M47 48 L53 48 L53 42 L47 42 Z"
sign wear-dark-glasses "Wear the glasses for this light"
  number     M007
  obliges
  outline    "M88 52 C88 76 71 96 50 96 C29 96 12 76 12 52 C12 28 29 8 50 8 C71 8 88 28 88 52 Z"
  outline    "M14 48 L20 48 L20 42 L14 42 Z M80 48 L86 48 L86 42 L80 42 Z"
  outline    "M27 36 L22 38 L20 43 L20 53 L22 58 L27 60 L40 60 L45 58 L47 53 L47 43 L45 38 L40 36 Z"
  outline    "M60 36 L55 38 L53 43 L53 53 L55 58 L60 60 L73 60 L78 58 L80 53 L80 43 L78 38 L73 36 Z"
  outline    "M47 48 L53 48 L53 42 L47 42 Z"
sign wear-face-shield "Wear a face shield"
  number     M013
  obliges
  outline    "M84 52 C84 75 69 94 50 94 C31 94 16 75 16 52 C16 29 31 10 50 10 C69 10 84 29 84 52 Z"
  outline    "M8 22 L92 22 L92 32 L8 32 Z"
  outline    "M30 38 L22 42 L18 50 L18 80 L22 88 L30 92 L70 92 L78 88 L82 80 L82 50 L78 42 L70 38 Z"
  outline    "M67 44 L73 47 L76 53 L76 77 L73 83 L67 86 L33 86 L27 83 L24 77 L24 53 L27 47 L33 44 Z"
  outline    "M43 58 C43 56 41 54 39 54 C37 54 35 56 35 58 C35 60 37 62 39 62 C41 62 43 60 43 58 Z"
  outline    "M65 58 C65 56 63 54 61 54 C59 54 57 56 57 58 C57 60 59 62 61 62 C63 62 65 60 65 58 Z"
  outline    "M40 74 L60 74 L60 70 L40 70 Z"
sign wear-ear-protection "Wear ear protection"
  number     M003
  obliges
  outline    "M80 56 C80 77 67 94 50 94 C33 94 20 77 20 56 C20 35 33 18 50 18 C67 18 80 35 80 56 Z"
  outline    "M7 39 L14 21 L30 7 L50 2 L70 7 L86 21 L93 39 L86 42 L79 25 L67 14 L50 10 L33 14 L21 25 L14 42 Z"
  outline    "M13 38 L18 40 L20 45 L20 67 L18 72 L13 74 L9 74 L4 72 L2 67 L2 45 L4 40 L9 38 Z"
  outline    "M91 38 L96 40 L98 45 L98 67 L96 72 L91 74 L87 74 L82 72 L80 67 L80 45 L82 40 L87 38 Z"
  outline    "M43 52 C43 50 41 48 39 48 C37 48 35 50 35 52 C35 54 37 56 39 56 C41 56 43 54 43 52 Z"
  outline    "M65 52 C65 50 63 48 61 48 C59 48 57 50 57 52 C57 54 59 56 61 56 C63 56 65 54 65 52 Z"
  outline    "M40 76 L60 76 L60 72 L40 72 Z"
sign wear-gloves "Wear gloves"
  number     M009
  obliges
  outline    "M32 16 L36 17 L37 21 L37 55 L36 59 L32 60 L31 60 L27 59 L26 55 L26 21 L27 17 L31 16 Z"
  outline    "M46 6 L50 7 L51 11 L51 55 L50 59 L46 60 L45 60 L41 59 L40 55 L40 11 L41 7 L45 6 Z"
  outline    "M60 8 L64 9 L65 13 L65 55 L64 59 L60 60 L59 60 L55 59 L54 55 L54 13 L55 9 L59 8 Z"
  outline    "M73 18 L77 19 L78 23 L78 55 L77 59 L73 60 L73 60 L69 59 L68 55 L68 23 L69 19 L73 18 Z"
  outline    "M26 46 L78 46 L78 64 L70 80 L34 80 L26 66 Z"
  outline    "M32 74 L22 72 L4 48 L4 42 L12 38 L28 56 Z M33 85 L71 85 L71 97 L33 97 Z"
sign wear-safety-shoes "Wear safety shoes"
  number     M008
  obliges
  outline    "M30 8 L58 8 L60 46 L78 54 L94 60 L98 70 L98 78 L28 78 L26 60 Z"
  outline    "M26 83 L98 83 L98 91 L26 91 Z M78 72 L93 72 L90 64 L78 60 Z"
sign wear-helmet "Wear a helmet"
  number     M014
  obliges
  outline    "M16 44 C16 18 30 6 50 6 C70 6 84 18 84 44 Z M6 44 L94 44 L94 52 L6 52 Z"
  outline    "M24 57 L76 57 L74 76 L64 92 L50 98 L36 92 L26 76 Z"
  outline    "M44 66 C44 64 42 62 40 62 C38 62 36 64 36 66 C36 68 38 70 40 70 C42 70 44 68 44 66 Z"
  outline    "M64 66 C64 64 62 62 60 62 C58 62 56 64 56 66 C56 68 58 70 60 70 C62 70 64 68 64 66 Z"
  outline    "M41 85 L59 85 L59 81 L41 81 Z M38 10 L35 40 L39 40 L42 10 Z"
  outline    "M58 10 L61 40 L65 40 L62 10 Z"
sign wear-mask "Wear a dust mask"
  number     M016
  obliges
  outline    "M88 52 C88 76 71 96 50 96 C29 96 12 76 12 52 C12 28 29 8 50 8 C71 8 88 28 88 52 Z"
  outline    "M42 40 C42 37 40 35 37 35 C34 35 32 37 32 40 C32 43 34 45 37 45 C40 45 42 43 42 40 Z"
  outline    "M68 40 C68 37 66 35 63 35 C60 35 58 37 58 40 C58 43 60 45 63 45 C66 45 68 43 68 40 Z"
  outline    "M24 70 L38 90 L62 90 L76 70 L72 56 L28 56 Z"
  outline    "M33 61 L67 61 L70 70 L60 85 L40 85 L30 70 Z M27 60 L16 52 L14 56 L25 64 Z"
  outline    "M75 64 L86 56 L84 52 L73 60 Z M38 73 L62 73 L62 70 L38 70 Z"
sign wear-respirator "Wear a respirator"
  number     M017
  obliges
  outline    "M82 44 C82 66 68 84 50 84 C32 84 18 66 18 44 C18 22 32 4 50 4 C68 4 82 22 82 44 Z"
  outline    "M34 30 L28 32 L26 38 L26 44 L28 50 L34 52 L66 52 L72 50 L74 44 L74 38 L72 32 L66 30 Z"
  outline    "M64 35 L68 36 L69 40 L69 42 L68 46 L64 47 L36 47 L32 46 L31 42 L31 40 L32 36 L36 35 Z"
  outline    "M65 74 C65 66 58 59 50 59 C42 59 35 66 35 74 C35 82 42 89 50 89 C58 89 65 82 65 74 Z"
  outline    "M60 74 C60 80 56 84 50 84 C44 84 40 80 40 74 C40 68 44 64 50 64 C56 64 60 68 60 74 Z"
  outline    "M38 80 C38 88 32 94 24 94 C16 94 10 88 10 80 C10 72 16 66 24 66 C32 66 38 72 38 80 Z"
  outline    "M30 80 C30 77 27 74 24 74 C21 74 18 77 18 80 C18 83 21 86 24 86 C27 86 30 83 30 80 Z"
  outline    "M90 80 C90 88 84 94 76 94 C68 94 62 88 62 80 C62 72 68 66 76 66 C84 66 90 72 90 80 Z"
  outline    "M82 80 C82 77 79 74 76 74 C73 74 70 77 70 80 C70 83 73 86 76 86 C79 86 82 83 82 80 Z"
sign wear-apron "Wear an apron"
  number     M026
  obliges
  outline    "M34 24 L66 24 L68 46 L84 56 L82 98 L18 98 L16 56 L32 46 Z"
  outline    "M31 20 L35 13 L41 7 L50 5 L59 7 L65 13 L69 20 L63 22 L60 16 L56 12 L50 11 L44 12 L40 16 L37 22 Z"
  outline    "M33 52 L5 61 L3 55 L31 46 Z M69 46 L97 55 L95 61 L67 52 Z"
  outline    "M38 70 L62 70 L62 66 L38 66 Z"
sign wear-protective-clothing "Wear the right clothing"
  number     M010
  obliges
  outline    "M36 6 L50 16 L64 6 L82 14 L98 54 L84 60 L74 38 L74 98 L26 98 L26 38 L16 60 L2 54 L18 14 Z"
  outline    "M49 94 L52 94 L52 20 L49 20 Z M56 60 L68 60 L68 56 L56 56 Z"
sign earth-yourself "Join yourself to earth"
  number     M005
  obliges
  outline    "M45 4 L55 4 L55 50 L45 50 Z M12 50 L88 50 L88 60 L12 60 Z"
  outline    "M26 68 L74 68 L74 78 L26 78 Z M39 86 L61 86 L61 96 L39 96 Z"
sign unplug "Pull out the plug"
  number     M006
  obliges
  outline    "M24 40 L28 42 L30 46 L30 64 L28 68 L24 70 L8 70 L4 68 L2 64 L2 46 L4 42 L8 40 Z"
  outline    "M30 46 L42 46 L42 51 L30 51 Z M30 59 L42 59 L42 64 L30 64 Z"
  outline    "M2 58 L-1 58 L-1 52 L2 52 Z"
  outline    "M62 38 L76 38 L84 46 L98 46 L98 64 L84 64 L76 72 L62 72 Z"
  outline    "M46 16 L54 16 L54 30 L46 30 Z M46 80 L54 80 L54 94 L46 94 Z"
sign lock-off "Lock off"
  number     M028
  obliges
  outline    "M74 46 L80 48 L82 54 L82 88 L80 94 L74 96 L26 96 L20 94 L18 88 L18 54 L20 48 L26 46 Z"
  outline    "M22 45 L25 34 L33 24 L44 19 L56 19 L67 24 L75 34 L78 45 L68 47 L66 38 L61 32 L54 28 L46 28 L39 32 L34 38 L32 47 Z"
  outline    "M58 66 C58 62 54 58 50 58 C46 58 42 62 42 66 C42 70 46 74 50 74 C54 74 58 70 58 66 Z"
  outline    "M45 86 L55 86 L53 70 L47 70 Z"
sign no-flames "No flames"
  number     P003
  forbids
  outline    "M26 96 L54 54 L62 58 L34 100 Z"
  outline    "M62 4 C66 16 84 28 82 44 C81 56 70 62 60 58 C48 54 46 42 52 32 C54 36 57 38 60 38 C64 30 64 16 62 4 Z"
sign no-touching "Do not touch"
  number     P010
  forbids
  outline    "M48 34 L51 35 L52 38 L52 38 L51 40 L48 41 L20 41 L17 40 L16 38 L16 38 L17 35 L20 34 Z"
  outline    "M48 43 L51 44 L52 46 L52 46 L51 49 L48 50 L14 50 L12 49 L11 46 L11 46 L12 44 L14 43 Z"
  outline    "M48 51 L51 52 L52 55 L52 55 L51 58 L48 59 L20 59 L17 58 L16 55 L16 55 L17 52 L20 51 Z"
  outline    "M48 34 L64 34 L77 38 L94 38 L94 61 L77 61 L64 66 L41 72 L37 66 L48 58 Z"
