# La figura de una forma de levantar: cuánto le pide a cada parte del cuerpo. Palabras para el dibujo, nunca para un límite.

figure-asks-back-little = Espalda baja: poco
figure-asks-back-some = Espalda baja: algo
figure-asks-back-much = Espalda baja: mucho
figure-asks-knee-left-little = Rodilla izquierda: poco
figure-asks-knee-left-some = Rodilla izquierda: algo
figure-asks-knee-left-much = Rodilla izquierda: mucho
figure-asks-knee-right-little = Rodilla derecha: poco
figure-asks-knee-right-some = Rodilla derecha: algo
figure-asks-knee-right-much = Rodilla derecha: mucho
figure-asks-hip-left-little = Cadera izquierda: poco
figure-asks-hip-left-some = Cadera izquierda: algo
figure-asks-hip-left-much = Cadera izquierda: mucho
figure-asks-hip-right-little = Cadera derecha: poco
figure-asks-hip-right-some = Cadera derecha: algo
figure-asks-hip-right-much = Cadera derecha: mucho

figure-note = Este dibujo se hizo con cálculos para un cuerpo sano de su estatura. Compara formas. No puede verle a usted.
figure-note-no-height = No se sabe su estatura o su peso. Se calculó un cuerpo sano pequeño y uno grande. Se dibuja el que más carga la espalda. Compara formas. No puede verle a usted.
