import type { ShopPage } from '../page.ts'

// Invented shops: Oficina do Sobreiro (Portugal), Mercearia Alecrim (Portugal), Loja Jabuticaba (Brazil), Casa Ipê (Brazil).
export const ptPages: readonly ShopPage[] = [
  {
    name: "Portugal: items, postage and tax contained; the directive's words",
    url: 'https://sobreiro.example/checkout',
    lang: 'pt-PT',
    body: `<h1>Resumo da encomenda</h1><table>
      <tr><td>Subtotal</td><td>64,50 €</td></tr><tr><td>Portes de envio</td><td>4,95 €</td></tr>
      <tr><td>Total da encomenda</td><td><b>69,45 €</b></td></tr><tr><td>IVA incluído (23%)</td><td>12,99 €</td></tr></table>
      <label><input type="checkbox"> Li e aceito as condições gerais de venda</label><button>Encomenda com obrigação de pagar</button>`,
    stage: 'checkout',
    total: '69.45 EUR',
    placeOrder: ['Encomenda com obrigação de pagar'],
    parts: ['items 64.50', 'shipping 4.95'],
  },
  {
    name: 'Portugal: a cart that says shipping comes in the next step',
    url: 'https://alecrim.example/carrinho',
    lang: 'pt-PT',
    body: `<h1>O seu carrinho</h1><ul><li><span>Azeite 75 cl</span> <span>Qtd: 3</span> <span>26,70 €</span></li></ul>
      <p><span>Total de artigos</span> <span>26,70 €</span></p><p><span>Envio</span> <span>calculado no próximo passo</span></p>
      <p><span>Total</span> <span>26,70 €</span></p><a href="/checkout">Avançar com a compra</a>`,
    stage: 'cart',
    total: null,
    placeOrder: [],
    items: ['3 Azeite 75 cl 26.70'],
  },
  {
    name: 'Portugal: a confirmation with a payment reference beside the number',
    url: 'https://alecrim.example/encomenda/concluida',
    lang: 'pt-PT',
    body: `<h1>Obrigado pela sua encomenda!</h1><p>Número da encomenda: <strong>MA-20871</strong></p>
      <p>Entidade: 21800</p><p>Referência: 123 456 789</p>
      <dl><dt>Subtotal</dt><dd>26,70 €</dd><dt>Entrega</dt><dd>3,50 €</dd><dt>Total</dt><dd>30,20 €</dd></dl>`,
    stage: 'confirmation',
    total: '30.20 EUR',
    orderNumber: 'MA-20871',
  },
  {
    name: 'Brazil: freight, coupon, instalments, the cheaper way to pay, points',
    url: 'https://jabuticaba.example/checkout/pagamento',
    lang: 'pt-BR',
    body: `<p>Faltam R$ 40,00 para ganhar frete grátis</p>
      <div><span>Produtos</span><span>R$ 1.159,90</span></div><div><span>Frete</span><span>R$ 25,00</span></div>
      <div><span>Cupom BEMVINDO</span><span>-R$ 50,00</span></div><div><strong>Total</strong><strong>R$ 1.134,90</strong></div>
      <p>em até 10x de R$ 113,49 sem juros</p><p>Você economizou R$ 50,00</p><p>Você acumula 113 pontos</p>
      <input autocomplete="cc-number"><button type="submit">Finalizar compra</button>`,
    stage: 'checkout',
    total: '1134.90 BRL',
    placeOrder: ['Finalizar compra'],
    parts: ['items 1159.90', 'shipping 25.00', 'discount -50.00'],
  },
  {
    name: 'Brazil: split price, list of terms, pays at once',
    url: 'https://casaipe.example/checkout',
    lang: 'pt-BR',
    body: `<dl><dt>Valor dos produtos</dt><dd><span>R$</span> <span>89</span><span>,</span><span>90</span></dd>
      <dt>Entrega</dt><dd><span>R$</span> <span>12</span><span>,</span><span>10</span></dd>
      <dt>Valor a pagar</dt><dd><span>R$</span> <span>102</span><span>,</span><span>00</span></dd></dl>
      <label><input type="radio" name="payment" checked> Pix</label><button>Pagar com Pix</button>`,
    stage: 'checkout',
    total: '102.00 BRL',
    placeOrder: ['Pagar com Pix'],
    parts: ['items 89.90', 'shipping 12.10'],
  },
  {
    name: 'Brazil: order done, number after a sentence',
    url: 'https://jabuticaba.example/checkout/success',
    lang: 'pt-BR',
    body: `<h2>Pedido realizado com sucesso!</h2><p>O número do seu pedido é <b>#550031</b></p><p>CPF: 123.456.789-09</p>
      <div><span>Subtotal</span> <span>R$ 80,00</span></div><div><span>Frete</span> <span>R$ 15,00</span></div><div><span>Total</span> <span>R$ 95,00</span></div>`,
    stage: 'confirmation',
    total: '95.00 BRL',
    orderNumber: '550031',
  },
  {
    name: "Portugal: a voucher of the buyer's is used up, what is left on it is no part",
    url: 'https://sobreiro.example/checkout/pagamento',
    lang: 'pt-PT',
    body: `<table><tr><td>Artigos</td><td>€ 45,00</td></tr><tr><td>Custos de envio</td><td>€ 5,00</td></tr><tr><td>Vale oferta</td><td>− € 20,00</td></tr>
      <tr><td>Total a pagar</td><td>€ 30,00</td></tr></table><p>Saldo restante: € 10,00</p>
      <label><input type="checkbox"> Aceito os termos e condições</label><button>Confirmar e pagar</button>`,
    stage: 'checkout',
    total: '30.00 EUR',
    placeOrder: ['Confirmar e pagar'],
    parts: ['items 45.00', 'shipping 5.00', 'credit -20.00'],
  },
  {
    name: 'Brazil: a cart that offers a cheaper way to pay; the list says the sum of each line',
    url: 'https://casaipe.example/carrinho',
    lang: 'pt-BR',
    body: `<h1>Meu carrinho</h1><table><tr><th>Produto</th><th>Quantidade</th><th>Preço unitário</th><th>Total</th></tr>
      <tr><td>Rede de algodão</td><td>2</td><td>R$ 150,00</td><td>R$ 300,00</td></tr></table>
      <div><span>Subtotal</span><span>R$ 300,00</span></div><div><span>Frete</span><span>R$ 30,00</span></div>
      <div><span>Total do pedido</span><b>R$ 330,00</b></div><p>ou R$ 313,50 à vista no Pix</p><p>em até 3x de R$ 110,00 sem juros</p>
      <a href="/checkout">Ir para o checkout</a>`,
    stage: 'cart',
    total: '330.00 BRL',
    placeOrder: [],
    items: ['2 Rede de algodão 300.00'],
  },
]
