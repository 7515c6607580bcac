# Las personas a quienes trata un clínico: lo que Rust dice de ellas.

patients-count =
    { $count ->
        [0] Nadie.
        [one] Una persona.
       *[other] { $count } personas.
    }
patients-seen = Última vez: { $day }.
patients-seen-never = Aún sin noticias.
patients-review = Mirar el plan antes del { $day }.
patients-review-due = Toca revisar: había que mirar el plan antes del { $day }.
patients-histories =
    { $count ->
        [0] Aún no llegó ningún historial.
        [one] Llegó un historial.
       *[other] Llegaron { $count } historiales.
    }
patients-changed = { $label }: ahora «{ $new }» Antes: «{ $old }»
patients-new = { $label }: nuevo: «{ $new }»
patients-gone = { $label }: ya no: «{ $old }»
